import { describe, expect, it } from 'vitest';
import { Refusal, type Client } from '../../../src/contract/client.ts';
import type { ErrorCode } from '../../../src/contract/errors.ts';
import { FORMAT, type Project } from '../../../src/project/schema.ts';
import { Saving } from '../../../renderer/store/saving.svelte.ts';

const named = (name: string): Project => ({ format: FORMAT, name, assemblies: {}, surfaces: [] });
const head = { id: 'a', revision: 1, savedAt: '2026-03-02T14:03:00Z', undoLabel: null, redoLabel: null };

/** A host that counts revisions and refuses while told to. */
const host = () => {
  const kept: { name: string; label: string; onto: number }[] = [];
  const state: { refuse: ErrorCode | null } = { refuse: null };
  const call = (method: string, params: { revision: number; label: string; document: Project }): Promise<unknown> => {
    if (method !== 'projects.save') return Promise.reject(new Error(`unexpected ${method}`));
    if (state.refuse)
      return Promise.reject(new Refusal({ code: state.refuse, sentence: 'The disk is full. Free some space.' }));
    kept.push({ name: params.document.name, label: params.label, onto: params.revision });
    return Promise.resolve({ ...head, revision: params.revision + 1, undoLabel: params.label });
  };
  return { kept, state, client: { call } as unknown as Client };
};

describe('edits on their way to the store', () => {
  it('go one after the other, each onto the revision before it', async () => {
    const { kept, client } = host();
    const saving = new Saving(client);
    saving.begin(head);
    for (const name of ['one', 'two', 'three']) saving.add(`Rename to ${name}`, named(name));
    await saving.flush();
    expect(kept.map(({ name, onto }) => [name, onto])).toEqual([
      ['one', 1],
      ['two', 2],
      ['three', 3],
    ]);
    expect(saving.waiting).toBe(0);
    expect(saving.head?.undoLabel).toBe('Rename to three');
  });

  it('wait when the store refuses, lose nothing, and go on at the next try', async () => {
    const { kept, state, client } = host();
    const saving = new Saving(client);
    saving.begin(head);
    state.refuse = 'store-full';
    saving.add('First', named('one'));
    await saving.flush();
    saving.add('Second', named('two'));
    expect(saving.refusal?.sentence).toContain('disk is full');
    expect(saving.waiting).toBe(2);
    expect(kept).toEqual([]);
    state.refuse = null;
    await saving.flush();
    expect(kept.map((edit) => edit.name)).toEqual(['one', 'two']);
    expect(saving.refusal).toBeNull();
  });
});
