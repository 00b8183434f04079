import { BrowserWindow, session } from 'electron';
import { isOwnPage } from './origin.ts';

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
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, decide) => {
    decide(false);
  });
  session.defaultSession.setPermissionCheckHandler(() => false);
  return window;
};
