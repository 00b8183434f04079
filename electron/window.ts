import { BrowserWindow, dialog, session } from 'electron';
import { isOwnPage } from './origin.ts';

/** The page holds on to an edit that the store would not take; only its user may let that go. */
const mayCloseUnsaved = (window: BrowserWindow): boolean =>
  dialog.showMessageBoxSync(window, {
    type: 'warning',
    message: 'The last edit is not saved yet.',
    detail: 'The window says why. Everything before it is safe.',
    buttons: ['Stay', 'Close without the last edit'],
    defaultId: 0,
    cancelId: 0,
  }) === 1;

/** The one window: a page without Node, without other pages, and without permissions. */
export const createWindow = (preload: string): BrowserWindow => {
  const window = new BrowserWindow({
    width: 1280,
    height: 800,
    minWidth: 720,
    minHeight: 480,
    show: false,
    title: 'Lullwright',
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
      spellcheck: false,
    },
  });
  window.once('ready-to-show', () => {
    window.show();
  });
  window.webContents.setWindowOpenHandler(() => ({ action: 'deny' }));
  window.webContents.on('will-navigate', (event) => {
    if (!isOwnPage(event.url)) event.preventDefault();
  });
  window.webContents.on('will-attach-webview', (event) => {
    event.preventDefault();
  });
  window.webContents.on('will-prevent-unload', (event) => {
    if (mayCloseUnsaved(window)) event.preventDefault();
  });
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, decide) => {
    decide(false);
  });
  session.defaultSession.setPermissionCheckHandler(() => false);
  return window;
};
