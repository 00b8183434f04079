import { dialog, type BrowserWindow } from 'electron';
import { writeFile } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Response } from '../src/contract/client.ts';

const fileNameOf = (params: unknown): string | null => {
  if (typeof params !== 'object' || params === null || !('fileName' in params)) return null;
  return typeof params.fileName === 'string' && params.fileName !== '' ? basename(params.fileName) : null;
};

/** Prints the page as it stands to a tagged PDF, at a place the user chooses. */
export const printPdf = async (window: BrowserWindow, params: unknown): Promise<Response> => {
  const fileName = fileNameOf(params);
  if (fileName === null)
    return { ok: false, error: { code: 'bad-request', sentence: 'Printing needs a file name to suggest.' } };
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    defaultPath: fileName.endsWith('.pdf') ? fileName : `${fileName}.pdf`,
    filters: [{ name: 'PDF', extensions: ['pdf'] }],
  });
  if (canceled || !filePath) return { ok: true, value: { saved: false } };
  try {
    const pdf = await window.webContents.printToPDF({
      preferCSSPageSize: true,
      printBackground: true,
      generateTaggedPDF: true,
    });
    await writeFile(filePath, pdf);
    return { ok: true, value: { saved: true, file: filePath } };
  } catch (fault) {
    const reason = fault instanceof Error ? fault.message : String(fault);
    const sentence = `The PDF could not be written to ${filePath} (${reason}); choose another folder.`;
    return { ok: false, error: { code: 'internal', sentence } };
  }
};
