import type { Database } from 'better-sqlite3';
import { randomUUID } from 'node:crypto';
import type { Store } from '../../service/ports.ts';
import { createProjects, type Projects } from './projects.ts';
import { openDatabase } from './openDatabase.ts';
import { toStoreRefusal } from './storeRefusal.ts';

export interface SqliteStore extends Store {
  readonly close: () => void;
}

export interface Outside {
  readonly now: () => Date;
  readonly newId: () => string;
}

/**
 * The store in one SQLite file. The file is opened at the first call and, where that fails, at the next call again:
 * once its user has made room or closed the other program, work goes on without a restart.
 */
export const createSqliteStore = (
  file: string,
  outside: Outside = { now: () => new Date(), newId: randomUUID },
): SqliteStore => {
  const held: { database?: Database; projects?: Projects } = {};

  const projects = (): Projects => {
    held.database ??= openDatabase(file);
    held.projects ??= createProjects(held.database, outside);
    return held.projects;
  };
  const close = (): void => {
    held.database?.close();
    delete held.database;
    delete held.projects;
  };
  const attempt = <T>(work: (store: Projects) => T): Promise<T> =>
    new Promise((resolve, reject) => {
      try {
        resolve(work(projects()));
      } catch (fault) {
        if (held.database?.readonly) close();
        reject(toStoreRefusal(fault, file));
      }
    });

  return {
    close,
    list: () => attempt((store) => store.list()),
    create: (document, label) => attempt((store) => store.create(document, label)),
    open: (id) => attempt((store) => store.open(id)),
    revision: (id) => attempt((store) => store.revision(id)),
    save: (edit) => attempt((store) => store.save(edit)),
    undo: (step) => attempt((store) => store.move(step, -1)),
    redo: (step) => attempt((store) => store.move(step, 1)),
    delete: (id) => attempt((store) => store.mark(id, true)),
    restore: (id) => attempt((store) => store.mark(id, false)),
  };
};
