import Database from 'better-sqlite3';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createSqliteStore, type SqliteStore } from '../../../src/host/sqlite/createSqliteStore.ts';
import { HISTORY_LIMIT } from '../../../src/host/sqlite/history.ts';
import { smallProject } from './smallProject.ts';

describe('history of a project in the store', () => {
  let folder: string;
  let store: SqliteStore;
  const file = (): string => join(folder, 'deep', 'store.sqlite');
  const reopen = (): void => {
    store.close();
    store = createSqliteStore(file());
  };

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'lullwright-history-'));
    store = createSqliteStore(file());
  });
  afterEach(() => {
    store.close();
    rmSync(folder, { recursive: true });
  });

  it('gives a document back exactly as it went in', async () => {
    const document = { ...smallProject('Cellar “ü”'), note: 'line\n\u2028 end', surfaces: [] };
    const { id, revision, undoLabel, redoLabel } = await store.create(document, 'created');
    reopen();
    expect((await store.open(id)).document).toEqual(document);
    expect({ revision, undoLabel, redoLabel }).toEqual({ revision: 1, undoLabel: null, redoLabel: null });
  });

  it('undoes and redoes across a restart, each raising the revision by one', async () => {
    const { id } = await store.create(smallProject('one'), 'created');
    await store.save({ id, revision: 1, label: 'second board', document: smallProject('two') });
    await store.save({ id, revision: 2, label: 'third board', document: smallProject('three') });
    reopen();
    const undone = await store.undo({ id, revision: 3 });
    expect(undone).toMatchObject({ revision: 4, undoLabel: 'second board', redoLabel: 'third board' });
    expect(undone.document).toEqual(smallProject('two'));
    reopen();
    const first = await store.undo({ id, revision: 4 });
    expect(first).toMatchObject({ undoLabel: null, redoLabel: 'second board', document: { name: 'one' } });
    await expect(store.undo({ id, revision: 5 })).rejects.toMatchObject({ error: { code: 'nothing-to-undo' } });
    const redone = await store.redo({ id, revision: 5 });
    expect(redone).toMatchObject({ revision: 6, document: { name: 'two' }, redoLabel: 'third board' });
    expect((await store.list())[0]).toMatchObject({ name: 'two', revision: 6 });
  });

  it('drops what redo would have brought once a new edit is saved', async () => {
    const { id } = await store.create(smallProject('one'), 'created');
    await store.save({ id, revision: 1, label: 'a', document: smallProject('two') });
    await store.undo({ id, revision: 2 });
    const saved = await store.save({ id, revision: 3, label: 'b', document: smallProject('other') });
    expect(saved).toMatchObject({ revision: 4, undoLabel: 'b', redoLabel: null });
    await expect(store.redo({ id, revision: 4 })).rejects.toMatchObject({
      error: { code: 'nothing-to-undo', sentence: 'There is nothing to redo.' },
    });
  });

  it('refuses an edit that started from an older revision, and changes nothing', async () => {
    const { id } = await store.create(smallProject('one'), 'created');
    await store.save({ id, revision: 1, label: 'a', document: smallProject('two') });
    for (const attempt of [
      store.save({ id, revision: 1, label: 'b', document: smallProject('late') }),
      store.undo({ id, revision: 1 }),
      store.redo({ id, revision: 3 }),
    ])
      await expect(attempt).rejects.toMatchObject({ error: { code: 'conflict' } });
    expect(await store.open(id)).toMatchObject({ revision: 2, document: { name: 'two' } });
  });

  it(`keeps the last ${HISTORY_LIMIT} steps`, async () => {
    const { id } = await store.create(smallProject('state 1'), 'created');
    for (let revision = 1; revision <= HISTORY_LIMIT + 5; revision += 1)
      await store.save({ id, revision, label: `edit ${revision}`, document: smallProject(`state ${revision + 1}`) });
    store.close();
    const database = new Database(file(), { readonly: true });
    expect(database.prepare('SELECT count(*), min(step) FROM edit').raw().get()).toEqual([HISTORY_LIMIT, 7]);
    database.close();
    expect(await store.open(id)).toMatchObject({ document: { name: `state ${HISTORY_LIMIT + 6}` } });
  });

  it('lists newest first, with deleted ones, which can be restored with their history', async () => {
    store.close();
    const times = [1, 2, 3, 4].map((second) => new Date(Date.UTC(2026, 0, 1, 0, 0, second)));
    const ids = ['first', 'second'];
    store = createSqliteStore(file(), { now: () => times.shift() ?? new Date(0), newId: () => ids.shift() ?? '' });
    await store.create(smallProject('Garage'), 'created');
    await store.create(smallProject('Loft'), 'created');
    await store.save({ id: 'first', revision: 1, label: 'renamed', document: smallProject('Garage 2') });
    expect(await store.delete('second')).toMatchObject({ id: 'second', deleted: true });
    expect((await store.list()).map(({ name, deleted }) => ({ name, deleted }))).toEqual([
      { name: 'Garage 2', deleted: false },
      { name: 'Loft', deleted: true },
    ]);
    expect(await store.restore('second')).toMatchObject({ deleted: false, createdAt: '2026-01-01T00:00:02.000Z' });
    expect(await store.undo({ id: 'first', revision: 2 })).toMatchObject({ document: { name: 'Garage' } });
  });

  it('says which project is missing', async () => {
    for (const attempt of [store.open('gone'), store.revision('gone'), store.delete('gone')])
      await expect(attempt).rejects.toMatchObject({ error: { code: 'not-found' } });
  });
});
