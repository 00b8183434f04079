import Database from 'better-sqlite3';
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { createSqliteStore } from '../../../src/host/sqlite/createSqliteStore.ts';
import { smallProject } from './smallProject.ts';

const ROUNDS = 16;
const script = fileURLToPath(new URL('./writeUntilKilled.ts', import.meta.url));

/** @returns the last revision that the killed process had acknowledged */
const writeAndKill = async (file: string, id: string, after: number): Promise<number> => {
  const child = spawn(process.execPath, [script, file, id], { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise((resolve) => child.once('close', resolve));
  let output = '';
  const started = new Promise<void>((resolve) => {
    child.stdout.on('data', (piece: Buffer) => {
      output += piece.toString('utf8');
      resolve();
    });
  });
  await started;
  await wait(after);
  child.kill('SIGKILL');
  await ended;
  const whole = output.slice(0, output.lastIndexOf('\n'));
  return Number(whole.split('\n').at(-1));
};

describe('store killed in the middle of writing', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lullwright-kill-'));
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it(`keeps every acknowledged edit whole through ${ROUNDS} kills`, { timeout: 60_000 }, async () => {
    const file = join(folder, 'store.sqlite');
    const first = createSqliteStore(file);
    const { id } = await first.create(smallProject('state 1'), 'created');
    first.close();
    let before = 1;
    for (let round = 0; round < ROUNDS; round += 1) {
      const acknowledged = await writeAndKill(file, id, 15 + ((round * 37) % 60));
      const database = new Database(file);
      expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
      database.close();
      const store = createSqliteStore(file);
      const kept = await store.open(id);
      store.close();
      expect(acknowledged).toBeGreaterThanOrEqual(before);
      expect(kept.revision).toBeGreaterThanOrEqual(acknowledged);
      expect(kept.revision).toBeLessThanOrEqual(acknowledged + 1);
      expect(kept.document).toMatchObject({ name: `state ${kept.revision}` });
      before = kept.revision;
    }
    expect(before).toBeGreaterThan(ROUNDS * 2);
  });
});
