import { Menu, type BrowserWindow, type MenuItemConstructorOptions } from 'electron';
import { ACTION_CHANNEL, type MenuAction } from './channels.ts';

/** The page takes its own keys first, so that Ctrl+Z inside a field stays the field's; the menu only shows them. */
const item = (window: BrowserWindow, label: string, action: MenuAction, keys?: string): MenuItemConstructorOptions => ({
  label,
  ...(keys === undefined ? {} : { accelerator: keys, registerAccelerator: false }),
  click: () => {
    window.webContents.send(ACTION_CHANNEL, action);
  },
});

/** Menu bar: what only a window can do goes by role, everything else is an action of the page. */
export const setMenu = (window: BrowserWindow, platform: NodeJS.Platform = process.platform): void => {
  const apple = platform === 'darwin';
  const file: MenuItemConstructorOptions[] = [
    item(window, 'New project…', 'new-project'),
    item(window, 'Projects…', 'open-project'),
    { type: 'separator' },
    item(window, 'Import a project file…', 'import-project'),
    item(window, 'Export this project…', 'export-project'),
    { type: 'separator' },
    item(window, 'Print…', 'print', 'CmdOrCtrl+P'),
    { type: 'separator' },
    { role: apple ? 'close' : 'quit' },
  ];
  const edit: MenuItemConstructorOptions[] = [
    item(window, 'Undo', 'undo', 'CmdOrCtrl+Z'),
    item(window, 'Redo', 'redo', apple ? 'Cmd+Shift+Z' : 'Ctrl+Y'),
    { type: 'separator' },
    { role: 'cut' },
    { role: 'copy' },
    { role: 'paste' },
    { role: 'selectAll' },
  ];
  const view: MenuItemConstructorOptions[] = [
    { role: 'zoomIn' },
    { role: 'zoomOut' },
    { role: 'resetZoom' },
    { type: 'separator' },
    { role: 'togglefullscreen' },
  ];
  const template: MenuItemConstructorOptions[] = [
    ...(apple ? [{ role: 'appMenu' } as const] : []),
    { label: 'File', submenu: file },
    { label: 'Edit', submenu: edit },
    { label: 'View', submenu: view },
    { role: 'windowMenu' },
    { role: 'help', submenu: [item(window, 'Show the tour', 'show-tour')] },
  ];
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
};
