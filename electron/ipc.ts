import { ipcMain, type BrowserWindow, type IpcMainInvokeEvent } from 'electron';
import type { Response } from '../src/contract/client.ts';
import type { Host } from '../src/host/createHost.ts';
import { CALL_CHANNEL, PRINT_METHOD } from './channels.ts';
import { isOwnPage } from './origin.ts';
import { printPdf } from './printPdf.ts';

const isOwnFrame = (event: IpcMainInvokeEvent, window: BrowserWindow): boolean => {
  const frame = event.senderFrame;
  return frame !== null && frame === window.webContents.mainFrame && isOwnPage(frame.url);
};

const isPrint = (request: unknown): request is { method: string; params: unknown } =>
  typeof request === 'object' && request !== null && 'method' in request && request.method === PRINT_METHOD;

/** The one channel: calls of the window's own page go to the host, printing to the shell; other frames get nothing. */
export const answerCalls = (host: Host, window: BrowserWindow): void => {
  ipcMain.handle(CALL_CHANNEL, async (event, request: unknown): Promise<Response> => {
    if (!isOwnFrame(event, window))
      return {
        ok: false,
        error: { code: 'bad-request', sentence: 'Calls are taken from Lullwright’s own page only.' },
      };
    if (isPrint(request)) return printPdf(window, 'params' in request ? request.params : undefined);
    return host.answer(request);
  });
};
