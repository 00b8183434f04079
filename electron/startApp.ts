import { app, dialog } from 'electron';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { createHost } from '../src/host/createHost.ts';
import { makeDataFolder } from '../src/host/dataFolder.ts';
import { answerCalls } from './ipc.ts';
import { setMenu } from './menu.ts';
import { START_PAGE } from './origin.ts';
import { declareScheme, serveScheme } from './protocol.ts';
import { createWindow } from './window.ts';

export interface Places {
  /** folder of the built page */
  readonly pages: string;
  readonly preload: string;
  /** folder in which projects are kept */
  readonly data: string;
}

/** Makes the folder of the projects with Electron's own files and its lock in it. @returns whether there is one now */
const hasFolder = (data: string): boolean => {
  try {
    makeDataFolder(data);
    const own = join(data, 'window');
    mkdirSync(own, { recursive: true });
    app.setPath('userData', own);
    return true;
  } catch (fault) {
    dialog.showErrorBox('Lullwright cannot start', fault instanceof Error ? fault.message : String(fault));
    return false;
  }
};

/** One running instance with one window; a second start brings the first window forward. */
export const startApp = async ({ pages, preload, data }: Places): Promise<void> => {
  if (!hasFolder(data)) {
    app.exit(1);
    return;
  }
  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return;
  }
  declareScheme();
  await app.whenReady();
  const host = createHost({ folder: data, pages, runtime: `Electron ${process.versions.electron}` });
  serveScheme(host);
  const window = createWindow(preload);
  answerCalls(host, window);
  setMenu(window);
  app.on('second-instance', () => {
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  app.on('window-all-closed', () => {
    app.quit();
  });
  app.on('will-quit', host.close);
  await window.loadURL(START_PAGE);
};
