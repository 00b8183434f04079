import Database from 'better-sqlite3';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { StoreRefusal } from '../../service/ports.ts';
import { makeFolder } from '../makeFolder.ts';
import { migrations } from './migrations.ts';
import { refusal, toStoreRefusal } from './storeRefusal.ts';

/** How long a change waits for another window's, ms. */
const PATIENCE = 1_500;

const layoutOf = (database: Database.Database): number => database.pragma('user_version', { simple: true }) as number;

const requireKnown = (layout: number, file: string): void => {
  if (layout > migrations.length)
    throw refusal(
      'newer-document',
      `Lullwright’s store ${file} was written by a newer Lullwright (layout ${layout}, this one knows ${migrations.length}). Install the newer version, or name another folder in LULLWRIGHT_DATA.`,
    );
};

const migrate = (database: Database.Database, file: string): void => {
  const step = database.transaction(() => {
    const layout = layoutOf(database);
    requireKnown(layout, file);
    for (const sql of migrations.slice(layout)) database.exec(sql);
    database.pragma(`user_version = ${migrations.length}`);
  });
  requireKnown(layoutOf(database), file);
  if (layoutOf(database) < migrations.length) step.immediate();
};

const isEmpty = (file: string): boolean => !existsSync(file) || statSync(file).size === 0;

/** Bytes of the file header that say "write-ahead log"; a copy in memory has none. */
const JOURNAL_VERSIONS = [18, 19];

/** A store that may not be written can still be read, from a copy in memory, if it was closed in good order. */
const openForReading = (file: string): Database.Database | null => {
  if (isEmpty(file) || !isEmpty(`${file}-wal`)) return null;
  const bytes = readFileSync(file);
  for (const at of JOURNAL_VERSIONS) bytes[at] = 1;
  const database = new Database(bytes, { readonly: true });
  try {
    requireKnown(layoutOf(database), file);
    return layoutOf(database) === migrations.length ? database : null;
  } catch (fault) {
    database.close();
    throw fault;
  }
};

const openForWriting = (file: string): Database.Database => {
  makeFolder(dirname(file));
  const database = new Database(file, { timeout: PATIENCE });
  try {
    requireKnown(layoutOf(database), file);
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    database.pragma('foreign_keys = ON');
    migrate(database, file);
    return database;
  } catch (fault) {
    database.close();
    throw fault;
  }
};

/**
 * Opens the store's file, made and brought to the present layout where needed.
 * @throws {StoreRefusal} store-locked, store-read-only, store-full, store-damaged, newer-document
 */
export const openDatabase = (file: string): Database.Database => {
  try {
    return openForWriting(file);
  } catch (fault) {
    const refused = toStoreRefusal(fault, file);
    const readOnly = refused instanceof StoreRefusal && refused.error.code === 'store-read-only';
    const readable = readOnly ? openForReading(file) : null;
    if (readable) return readable;
    throw refused;
  }
};
