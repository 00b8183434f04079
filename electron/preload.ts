import { contextBridge, ipcRenderer } from 'electron';
import type { Request, Response } from '../src/contract/client.ts';
import { ACTION_CHANNEL, CALL_CHANNEL, PRINT_METHOD, type MenuAction } from './channels.ts';

const call = (request: Request): Promise<Response> => ipcRenderer.invoke(CALL_CHANNEL, request) as Promise<Response>;

contextBridge.exposeInMainWorld('lullwright', {
  call,
  printPdf: (fileName: string): Promise<Response> => call({ method: PRINT_METHOD, params: { fileName } }),
  onAction: (listener: (action: MenuAction) => void): void => {
    ipcRenderer.on(ACTION_CHANNEL, (_event, action: MenuAction) => {
      listener(action);
    });
  },
});
