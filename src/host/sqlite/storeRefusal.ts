import { statfsSync } from 'node:fs';
import { dirname } from 'node:path';
import type { ErrorCode } from '../../contract/errors.ts';
import { StoreRefusal } from '../../service/ports.ts';

export const refusal = (code: ErrorCode, sentence: string): StoreRefusal => new StoreRefusal({ code, sentence });

const MEGABYTE = 1024 * 1024;
const isFull = (file: string): boolean => {
  try {
    const { bavail, bsize } = statfsSync(dirname(file));
    return bavail * bsize < MEGABYTE;
  } catch {
    return false;
  }
};

const sentences = {
  'store-locked': (file: string) =>
    `Another program is holding Lullwright’s store ${file}. Close other Lullwright windows, or wait for the backup to end, and try again.`,
  'store-read-only': (file: string) =>
    `Lullwright may not write to its store ${file}. Make the file and its folder writable, or name another folder in LULLWRIGHT_DATA.`,
  'store-full': (file: string) =>
    `The disk that holds ${file} is full, so the last edit was not kept. Free some space; earlier edits are safe.`,
  'store-damaged': (file: string) =>
    `Lullwright’s store ${file} is damaged. Put back a copy of the file from a backup, or move it away: Lullwright then starts with an empty store.`,
};

const codeOf = (code: string, file: string): keyof typeof sentences | null => {
  if (/^SQLITE_(BUSY|LOCKED|PROTOCOL)/.test(code)) return 'store-locked';
  if (/^SQLITE_FULL|^ENOSPC|^EDQUOT/.test(code)) return 'store-full';
  if (/^SQLITE_(READONLY|CANTOPEN|PERM|AUTH)|^E(ACCES|ROFS|PERM|NOTDIR|EXIST)$/.test(code))
    return isFull(file) ? 'store-full' : 'store-read-only';
  if (code.startsWith('SQLITE_IOERR')) return isFull(file) ? 'store-full' : 'store-damaged';
  if (/^SQLITE_(CORRUPT|NOTADB)/.test(code)) return 'store-damaged';
  return null;
};

/** Turns what SQLite or the file system reports into a refusal with a way out; other faults pass as they are. */
export const toStoreRefusal = (fault: unknown, file: string): unknown => {
  if (fault instanceof StoreRefusal || !(fault instanceof Error) || !('code' in fault)) return fault;
  const code = codeOf(String(fault.code), file);
  return code === null ? fault : refusal(code, sentences[code](file));
};
