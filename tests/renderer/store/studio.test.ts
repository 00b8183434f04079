import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { newBuild } from '../../../src/project/newBuild.ts';
import type { Project } from '../../../src/project/schema.ts';
import { Studio } from '../../../renderer/store/studio.svelte.ts';

const document = newBuild({
  name: 'Shed',
  length_m: 5,
  width_m: 3,
  height_m: 2.3,
  shell: 'timber-shed',
  source: null,
  neighbour_m: 9,
  budget: null,
  currency: '',
});

interface Kept {
  document: Project;
  revision: number;
}

/** A host with one project and another window that can save into it. */
const answering = () => {
  const store = new Map<string, Kept>([['a', { document, revision: 1 }]]);
  const calls: string[] = [];
  const opened = (id: string): unknown => ({
    id,
    ...store.get(id),
    savedAt: '2026-03-02T14:03:00Z',
    undoLabel: null,
    redoLabel: null,
  });
  const answer = (method: string, params: { id: string; revision: number; document: Project }): unknown => {
    calls.push(method);
    const kept = store.get(params.id);
    if (method === 'projects.create') {
      store.set('b', { document: params.document, revision: 1 });
      return { ok: true, value: opened('b') };
    }
    if (method === 'projects.revision') return { ok: true, value: { revision: kept?.revision ?? 0 } };
    if (method === 'projects.open') return { ok: true, value: opened(params.id) };
    if (method !== 'projects.save') return { ok: false, error: { code: 'bad-request', sentence: method } };
    if (kept?.revision !== params.revision)
      return { ok: false, error: { code: 'conflict', sentence: 'Another window has changed this project.' } };
    store.set(params.id, { document: params.document, revision: kept.revision + 1 });
    return { ok: true, value: opened(params.id) };
  };
  vi.stubGlobal('fetch', (_: string, { body }: { body: string }) => {
    const { method, params } = JSON.parse(body) as { method: string; params: never };
    return Promise.resolve({ json: () => Promise.resolve(answer(method, params)) });
  });
  const elsewhere = (name: string): void => {
    const kept = store.get('a');
    if (kept) store.set('a', { document: { ...kept.document, name }, revision: kept.revision + 1 });
  };
  return { store, calls, elsewhere };
};

const silentWorker = class {
  onmessage = null;
  onerror = null;
  postMessage(): void {
    // never answers: these tests are about the document
  }
};

const openStudio = async (): Promise<Studio> => {
  const studio = new Studio();
  await studio.takeFrom(studio.client.call('projects.open', { id: 'a' }));
  return studio;
};

beforeEach(() => {
  vi.stubGlobal('Worker', silentWorker);
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the open project', () => {
  it('takes an edit, saves it, and is a new document while the one before is untouched', async () => {
    const { store } = answering();
    const studio = await openStudio();
    const before = studio.project;
    expect(studio.run('renameProject', { name: 'Drum shed' })).toBe(true);
    await studio.saving.flush();
    expect(studio.project?.name).toBe('Drum shed');
    expect(before?.name).toBe('Shed');
    expect(store.get('a')?.document.name).toBe('Drum shed');
  });

  it('keeps the last good document when an edit breaks a rule, and says why', async () => {
    answering();
    const studio = await openStudio();
    const before = studio.project;
    expect(studio.run('setSurface', { surface: 'north', patch: { width_m: -3 } })).toBe(false);
    expect(studio.project).toBe(before);
    expect(studio.refusal?.sentence).toMatch(/width_m/);
    expect(studio.saving.waiting).toBe(0);
  });

  it('makes one step of a whole drag, and none of a drag that is given up', async () => {
    const { calls } = answering();
    const studio = await openStudio();
    const before = studio.project;
    const drag = studio.gesture();
    for (const width_m of [5.1, 5.2, 5.3]) drag.preview('setSurface', { surface: 'north', patch: { width_m } });
    drag.commit();
    await studio.saving.flush();
    expect(calls.filter((method) => method === 'projects.save')).toHaveLength(1);
    expect(studio.project?.surfaces[0]?.width_m).toBe(5.3);

    const after = studio.project;
    const other = studio.gesture();
    other.preview('setSurface', { surface: 'north', patch: { width_m: 9 } });
    other.cancel();
    expect(studio.project).toBe(after);
    expect(studio.project).not.toBe(before);
  });
});

describe('two windows on one project', () => {
  it('notices the other window and takes its version when asked', async () => {
    const { elsewhere } = answering();
    const studio = await openStudio();
    await studio.otherWindows.look();
    expect(studio.otherWindows.overtakenBy).toBeNull();
    elsewhere('Theirs');
    await studio.otherWindows.look();
    expect(studio.otherWindows.overtakenBy).toBe(2);
    await studio.otherWindows.takeNewer();
    expect(studio.project?.name).toBe('Theirs');
    expect(studio.otherWindows.overtakenBy).toBeNull();
  });

  it('keeps what was done here as a copy when both have changed', async () => {
    const { elsewhere, store } = answering();
    const studio = await openStudio();
    elsewhere('Theirs');
    studio.run('renameProject', { name: 'Mine' });
    await studio.saving.flush();
    expect(studio.saving.refusal?.code).toBe('conflict');
    expect(studio.project?.name).toBe('Mine');
    await studio.otherWindows.keepAsCopy();
    expect(store.get('b')?.document.name).toBe('Mine (this window)');
    expect(store.get('a')?.document.name).toBe('Theirs');
    expect(studio.saving.refusal).toBeNull();
    expect(studio.saving.head?.id).toBe('b');
  });
});
