import Database from 'better-sqlite3';
import { execFileSync } from 'node:child_process';
import { chmodSync, chownSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createSqliteStore, type SqliteStore } from '../../../src/host/sqlite/createSqliteStore.ts';
import { migrations } from '../../../src/host/sqlite/migrations.ts';
import { openDatabase } from '../../../src/host/sqlite/openDatabase.ts';
import { createProjects } from '../../../src/host/sqlite/projects.ts';
import { toStoreRefusal } from '../../../src/host/sqlite/storeRefusal.ts';
import { smallProject } from './smallProject.ts';

const isRoot = process.getuid?.() === 0;
const NOBODY = 65534;

/** A file system of 1 MB, where this machine lets us mount one. */
const mountSmall = (folder: string): boolean => {
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', folder], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
};

/** Permissions do not hold root back, so root steps down to nobody for the attempt. */
const asUnprivileged = async <T>(work: () => Promise<T>): Promise<T> => {
  if (!isRoot) return work();
  process.seteuid?.(NOBODY);
  try {
    return await work();
  } finally {
    process.seteuid?.(0);
  }
};

describe('store under fault', () => {
  let folder: string;
  let file: string;
  let stores: SqliteStore[];
  const openStore = (): SqliteStore => {
    const opened = createSqliteStore(file);
    stores.push(opened);
    return opened;
  };
  const expectRefusal = async (attempt: Promise<unknown>, code: string, named = file): Promise<void> => {
    const fault: unknown = await attempt.then(
      () => null,
      (reason: unknown) => reason,
    );
    expect(fault).toMatchObject({ name: 'StoreRefusal', error: { code } });
    expect((fault as Error).message).toMatch(/\.$/);
    expect((fault as Error).message).toContain(named);
  };
  const saveUntilRefused = async (store: SqliteStore, id: string): Promise<{ kept: number; fault: unknown }> => {
    for (let revision = 1; ; revision += 1) {
      const document = smallProject(`state ${revision + 1}`, 40_000);
      const fault: unknown = await store.save({ id, revision, label: 'more', document }).then(
        () => null,
        (reason: unknown) => reason,
      );
      if (fault !== null) return { kept: revision, fault };
    }
  };

  beforeEach(() => {
    stores = [];
    folder = mkdtempSync(join(tmpdir(), 'lullwright-fault-'));
    file = join(folder, 'store.sqlite');
  });
  afterEach(() => {
    for (const store of stores) store.close();
    chmodSync(folder, 0o755);
    rmSync(folder, { recursive: true });
  });

  it('refuses the edit that a store at its size limit cannot take, and takes it once there is room', () => {
    const database = openDatabase(file);
    const projects = createProjects(database, { now: () => new Date(), newId: () => 'p' });
    projects.create(smallProject('state 1'), 'created');
    database.pragma('max_page_count = 60');
    const edit = { id: 'p', revision: 1, label: 'large', document: smallProject('state 2', 400_000) };
    let fault: unknown;
    try {
      projects.save(edit);
    } catch (thrown) {
      fault = toStoreRefusal(thrown, file);
    }
    expect(fault).toMatchObject({ error: { code: 'store-full' } });
    expect(projects.open('p')).toMatchObject({ revision: 1, document: { name: 'state 1' } });
    database.pragma('max_page_count = 4294967294');
    expect(projects.save(edit)).toMatchObject({ revision: 2 });
    database.close();
  });

  it.skipIf(!isRoot || process.platform !== 'linux')('keeps every edit taken before the disk is full', async (test) => {
    const disk = join(folder, 'disk');
    mkdirSync(disk);
    if (!mountSmall(disk)) test.skip('no small disk can be mounted here');
    try {
      file = join(disk, 'store.sqlite');
      const store = openStore();
      const { id } = await store.create(smallProject('state 1'), 'created');
      const { kept, fault } = await saveUntilRefused(store, id);
      await expectRefusal(Promise.reject(fault), 'store-full');
      expect(kept).toBeGreaterThan(2);
      expect(await store.open(id)).toMatchObject({ revision: kept, document: { name: `state ${kept}` } });
      store.close();
      const database = new Database(file);
      expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
      database.close();
      expect(await store.open(id)).toMatchObject({ revision: kept, document: { name: `state ${kept}` } });
      store.close();
    } finally {
      execFileSync('umount', [disk]);
    }
  });

  it('says so while another program holds the store, and saves once it lets go', async () => {
    const store = openStore();
    const { id } = await store.create(smallProject('one'), 'created');
    const other = new Database(file);
    other.exec('BEGIN IMMEDIATE');
    const edit = { id, revision: 1, label: 'second board', document: smallProject('two') };
    await expectRefusal(store.save(edit), 'store-locked');
    expect(await store.open(id)).toMatchObject({ revision: 1 });
    other.exec('ROLLBACK');
    other.close();
    expect(await store.save(edit)).toMatchObject({ revision: 2 });
  });

  it('still shows what a read-only store holds, and refuses to change it', async () => {
    const store = openStore();
    const { id } = await store.create(smallProject('one'), 'created');
    store.close();
    if (isRoot) for (const path of [file, folder]) chownSync(path, NOBODY, NOBODY);
    chmodSync(file, 0o444);
    chmodSync(folder, 0o555);
    const edit = { id, revision: 1, label: 'second board', document: smallProject('two') };
    await asUnprivileged(async () => {
      expect(await store.open(id)).toMatchObject({ document: { name: 'one' } });
      expect(await store.list()).toHaveLength(1);
      await expectRefusal(store.save(edit), 'store-read-only');
    });
    chmodSync(folder, 0o755);
    chmodSync(file, 0o644);
    expect(await store.save(edit)).toMatchObject({ revision: 2 });
  });

  it('says so where the folder may not be written at all', async () => {
    if (isRoot) chownSync(folder, NOBODY, NOBODY);
    chmodSync(folder, 0o555);
    await asUnprivileged(() => expectRefusal(openStore().create(smallProject('one'), 'created'), 'store-read-only'));
    file = join(folder, 'below', 'store.sqlite');
    await asUnprivileged(() => expectRefusal(openStore().list(), 'store-read-only'));
  });

  it('refuses a file that is no store, names it and leaves it alone', async () => {
    const notes = 'These are my notes, not a store.\n'.repeat(200);
    writeFileSync(file, notes);
    await expectRefusal(openStore().list(), 'store-damaged');
    expect(readFileSync(file, 'utf8')).toBe(notes);
  });

  it('refuses what it meets on damaged pages', async () => {
    const store = openStore();
    const { id } = await store.create(smallProject('one', 200_000), 'created');
    store.close();
    const bytes = readFileSync(file);
    bytes.fill(0xa5, 4096);
    writeFileSync(file, bytes);
    await expectRefusal(store.open(id), 'store-damaged');
  });

  it('reports a damaged row, lists all the same, and undoes past it', async () => {
    const store = openStore();
    const { id } = await store.create(smallProject('one'), 'created');
    await store.save({ id, revision: 1, label: 'second board', document: smallProject('two') });
    const sound = await store.create(smallProject('sound'), 'created');
    store.close();
    const database = new Database(file);
    database.prepare(`UPDATE edit SET document = substr(document, 1, 9) WHERE project = ? AND step = 2`).run(id);
    database.close();
    await expectRefusal(store.open(id), 'store-damaged', '“two”');
    expect(await store.list()).toHaveLength(2);
    expect(await store.open(sound.id)).toMatchObject({ document: { name: 'sound' } });
    expect(await store.undo({ id, revision: 2 })).toMatchObject({ document: { name: 'one' } });
  });

  it('refuses a store written by a newer version, and changes nothing in it', async () => {
    const store = openStore();
    await store.create(smallProject('one'), 'created');
    store.close();
    const database = new Database(file);
    database.pragma(`user_version = ${migrations.length + 1}`);
    database.close();
    const before = readFileSync(file);
    await expectRefusal(store.create(smallProject('two'), 'created'), 'newer-document');
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('brings a new file to the present layout, safe against loss of power', () => {
    const database = openDatabase(file);
    expect(database.pragma('user_version', { simple: true })).toBe(migrations.length);
    expect(database.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(database.pragma('synchronous', { simple: true })).toBe(2);
    database.close();
  });
});
