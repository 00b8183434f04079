import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { createClient, Refusal } from '../../src/contract/client.ts';
import { createSqliteStore } from '../../src/host/sqlite/createSqliteStore.ts';
import { commands } from '../../src/project/commands/index.ts';
import { examples } from '../../src/project/examples.ts';
import type { Project } from '../../src/project/schema.ts';
import type { Store } from '../../src/service/ports.ts';
import { createService } from '../../src/service/service.ts';
import exampleDocument from '../support/exampleDocument.json' with { type: 'json' };
import { createMemoryStore } from '../support/memoryStore.ts';

const about = { version: '1', store: 'somewhere', runtime: 'test' };
const clientOf = (store: Store | null) => createClient(createService({ about, store, examples }));

const refusalOf = async (call: Promise<unknown>): Promise<Refusal['error']> => {
  try {
    await call;
  } catch (fault) {
    if (fault instanceof Refusal) return fault.error;
    throw fault;
  }
  throw new Error('was not refused');
};
const renamed = (document: unknown, name: string): Project =>
  commands.renameProject.apply(document as Project, { name });

const folder = mkdtempSync(join(tmpdir(), 'lullwright-service-'));
const sqlite = createSqliteStore(join(folder, 'store.sqlite'));
afterAll(() => {
  sqlite.close();
  rmSync(folder, { recursive: true });
});

describe.each([
  ['in memory', createMemoryStore()],
  ['in SQLite', sqlite],
])('keeping projects %s', (_, store) => {
  const client = clientOf(store);

  it('saves each edit as a step that undo and redo walk along', async () => {
    const created = await client.call('projects.create', { document: exampleDocument });
    expect(created).toMatchObject({ revision: 1, undoLabel: null, redoLabel: null });
    const { id } = created;
    const document = renamed(created.document, 'Second');
    const saved = await client.call('projects.save', { id, revision: 1, label: 'Rename the project', document });
    expect(saved).toMatchObject({ id, revision: 2, undoLabel: 'Rename the project', redoLabel: null });

    const back = await client.call('projects.undo', { id, revision: 2 });
    expect(back).toMatchObject({ revision: 3, undoLabel: null, redoLabel: 'Rename the project' });
    expect(back.document).toEqual(created.document);
    const forth = await client.call('projects.redo', { id, revision: 3 });
    expect(forth.document).toEqual(document);
    expect(await client.call('projects.revision', { id })).toEqual({ revision: 4 });
    expect((await client.call('projects.open', { id })).document).toEqual(document);

    expect(await refusalOf(client.call('projects.redo', { id, revision: 4 }))).toMatchObject({
      code: 'nothing-to-undo',
    });
  });

  it('drops what redo would have brought once something else is saved', async () => {
    const { id, document } = await client.call('projects.create', { document: exampleDocument });
    await client.call('projects.save', { id, revision: 1, label: 'A', document: renamed(document, 'A') });
    await client.call('projects.undo', { id, revision: 2 });
    const saved = await client.call('projects.save', { id, revision: 3, label: 'B', document: renamed(document, 'B') });
    expect(saved).toMatchObject({ revision: 4, undoLabel: 'B', redoLabel: null });
    expect(await refusalOf(client.call('projects.redo', { id, revision: 4 }))).toMatchObject({
      code: 'nothing-to-undo',
    });
  });

  it('refuses an edit of a project that another window has changed, and keeps the other’s', async () => {
    const { id, document } = await client.call('projects.create', { document: exampleDocument });
    await client.call('projects.save', { id, revision: 1, label: 'First', document: renamed(document, 'First') });
    const late = client.call('projects.save', { id, revision: 1, label: 'Late', document: renamed(document, 'Late') });
    expect(await refusalOf(late)).toMatchObject({ code: 'conflict' });
    expect(await refusalOf(client.call('projects.undo', { id, revision: 1 }))).toMatchObject({ code: 'conflict' });
    expect((await client.call('projects.open', { id })).document).toMatchObject({ name: 'First' });
  });

  it('keeps no document with a fault, and changes nothing then', async () => {
    const { id } = await client.call('projects.create', { document: exampleDocument });
    const broken = { ...exampleDocument, compare: ['nothing'] };
    const error = await refusalOf(client.call('projects.save', { id, revision: 1, label: 'X', document: broken }));
    expect(error).toMatchObject({ code: 'bad-document', faults: [{ path: 'compare[0]' }] });
    expect(await client.call('projects.revision', { id })).toEqual({ revision: 1 });
    expect(
      await refusalOf(
        client.call('projects.create', { document: { ...exampleDocument, format: 'lullwright/project@9' } }),
      ),
    ).toMatchObject({ code: 'newer-document' });
  });

  it('copies, deletes and restores', async () => {
    const { id, document } = await client.call('projects.create', { document: exampleDocument });
    const copy = await client.call('projects.duplicate', { id, name: 'A copy' });
    expect(copy.id).not.toBe(id);
    expect(copy.document).toEqual(renamed(document, 'A copy'));
    expect(await client.call('projects.delete', { id })).toMatchObject({ id, deleted: true });
    const listed = await client.call('projects.list', {});
    expect(listed.find((it) => it.id === id)).toMatchObject({ deleted: true });
    expect(listed.find((it) => it.id === copy.id)).toMatchObject({ deleted: false, name: 'A copy' });
    expect(await client.call('projects.restore', { id })).toMatchObject({ id, deleted: false });
  });

  it('exports a file that imports as the same project', async () => {
    const { id, document } = await client.call('projects.create', { document: exampleDocument });
    const file = await client.call('projects.export', { id });
    expect(file.fileName).toBe('every-kind-of-entry-once.lullwright.json');
    const back = await client.call('projects.import', { text: file.text });
    expect(back.id).not.toBe(id);
    expect(back.document).toEqual(document);
    expect(await refusalOf(client.call('projects.import', { text: file.text.slice(0, 999) }))).toMatchObject({
      code: 'not-a-project',
    });
  });

  it('opens each example as a project of one’s own', async () => {
    const offered = await client.call('examples.list', {});
    expect(offered.map((it) => it.key)).toEqual(examples.map((it) => it.key));
    for (const { key, name, what } of offered) {
      expect(what).toMatch(/^[A-Z].*\.$/s);
      expect((await client.call('examples.open', { key })).document).toMatchObject({ name });
    }
    expect(await refusalOf(client.call('examples.open', { key: 'opera' }))).toMatchObject({ code: 'not-found' });
  });

  it('knows no project that was never there', async () => {
    for (const call of [
      client.call('projects.open', { id: 'none' }),
      client.call('projects.delete', { id: 'none' }),
      client.call('projects.save', { id: 'none', revision: 1, label: 'X', document: exampleDocument }),
    ])
      expect(await refusalOf(call)).toMatchObject({ code: 'not-found' });
  });
});

describe('a document of the store that cannot be read any more', () => {
  it('is refused when it was saved by a newer Lullwright, and left alone', async () => {
    const store = createMemoryStore();
    const newer = { ...exampleDocument, format: 'lullwright/project@2' } as unknown as Project;
    const { id } = await store.create(newer, 'From the future');
    expect(await refusalOf(clientOf(store).call('projects.open', { id }))).toMatchObject({ code: 'newer-document' });
    expect((await store.open(id)).document).toEqual(newer);
  });
});

describe('a session without a store', () => {
  const client = clientOf(null);

  it('says of itself what it is, and keeps nothing', async () => {
    expect(await client.call('app.info', {})).toEqual(about);
    expect(await refusalOf(client.call('projects.list', {}))).toMatchObject({ code: 'bad-request' });
  });

  it('predicts every make-up over the third octaves from 25 Hz to 10 kHz', async () => {
    const { assemblies } = await client.call('predict', { document: exampleDocument });
    expect(Object.keys(assemblies)).toEqual(['wall-a', 'wall-b', 'door-a']);
    const wall = assemblies['wall-a'];
    expect(wall?.bands_Hz).toHaveLength(27);
    expect([wall?.bands_Hz[0], wall?.bands_Hz[26]]).toEqual([25, 10000]);
    expect(wall?.R_dB).toHaveLength(27);
    expect(wall?.spread_dB).toHaveLength(27);
    expect(Object.keys(wall?.ratings ?? {}).slice(0, 7)).toEqual([
      'Rw',
      'C',
      'Ctr',
      'C50_5000',
      'Ctr50_5000',
      'STC',
      'OITC',
    ]);
    // density times thickness of the library's values, studs not counted
    expect(wall?.surface_mass_kg_m2).toBeCloseTo(2 * 0.015 * 860 + 0.0005 * 1100 + 0.075 * 45 + 0.018 * 635, 2);
    expect(wall?.thickness_mm).toBeCloseTo(15 + 0.5 + 15 + 100 + 18, 6);
    expect(wall?.resonances_Hz).toHaveLength(1);
    expect(wall?.critical_Hz).toHaveLength(2);
    expect(assemblies['door-a']?.resonances_Hz).toEqual([]);
  });

  it('shares what gets out among the parts', async () => {
    const shell = await client.call('shell', { document: exampleDocument });
    expect(shell.parts).toHaveLength(6);
    const shares = shell.parts.map((part) => part.share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 4);
    expect(shell.limiting).toBe(shell.parts[0]?.id);
    shell.bands_Hz.forEach((__, i) =>
      expect(shell.parts.reduce((sum, part) => sum + (part.share_by_band[i] ?? 0), 0)).toBeCloseTo(1, 4),
    );
    for (const part of shell.parts) expect(part.if_perfect_Rw_gain_dB).toBeGreaterThanOrEqual(0);
  });

  it('has no shell without a surface', async () => {
    const empty = { ...exampleDocument, surfaces: [], options: [] };
    expect(await refusalOf(client.call('shell', { document: empty }))).toMatchObject({
      code: 'bad-document',
      faults: [{ path: 'surfaces' }],
    });
  });

  it('rates a measured curve, and names the lines that it cannot read', async () => {
    const bands = [100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150];
    // the reference curve of ISO 717-1 itself, 52 dB at 500 Hz, may be shifted up by 2 dB: 16 bands of 2 dB are 32 dB
    const reference = [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56];
    const csv = ['Hz;R', ...bands.map((band, i) => `${band};${reference[i] ?? 0}`)].join('\n');
    const { ratings } = await client.call('rate', { csv });
    expect(ratings).toMatchObject({ Rw: 54, STC: null, C50_5000: null });
    const error = await refusalOf(client.call('rate', { csv: '100;20\n125;x' }));
    expect(error).toMatchObject({ code: 'bad-document' });
    expect(error.sentence).toContain('Line 2');
  });
});
