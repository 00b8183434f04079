import { describe, expect, it } from 'vitest';
import { materialFacts } from '../../../renderer/views/makeUp/materialFacts.ts';
import { materialShelf } from '../../../renderer/views/makeUp/materialShelf.ts';
import { beginDraft, DRAFT_FIELDS, numberOf } from '../../../renderer/views/makeUp/ownMaterialDraft.ts';
import { insertions } from '../../../renderer/views/makeUp/newLayer.ts';
import { STARTING_POINTS, toAssembly } from '../../../renderer/views/makeUp/startingPoints.ts';
import { checkProject } from '../../../src/project/check.ts';
import { library } from '../../../src/project/library.ts';
import { example } from './example.ts';

const ids = (use: 'board' | 'interlayer' | 'fill', search = ''): readonly string[] =>
  materialShelf(example(), use, search).flatMap((group) => group.items.map((item) => item.id));

describe('the shelf of materials', () => {
  it('offers only what can be used in the place', () => {
    for (const id of ids('board')) expect(library[id]?.kind).toBe('board');
    expect(ids('interlayer')).toContain('rigid-adhesive');
    expect(ids('interlayer')).not.toContain('osb');
    expect(ids('fill')).toContain('mineral-wool-45');
    expect(ids('fill')).toContain('pir');
    expect(ids('fill')).not.toContain('brick');
  });
  it('finds by every word written, whatever their order and case', () => {
    expect(ids('board', 'DENSE plaster')).toContain('plasterboard-dense');
    expect(ids('board', 'plaster zebra')).toEqual([]);
  });
  it('puts the project’s own first', () => {
    const project = { ...example(), materials: { mine: { ...beginDraft('board', null), name: 'Mine' } } };
    const [first] = materialShelf(project, 'board', '');
    expect([first?.name, first?.items[0]?.id]).toEqual(['Your own', 'mine']);
  });
});

describe('the values of a material', () => {
  it('each come with where they are from', () => {
    for (const entry of Object.values(library))
      for (const fact of materialFacts(entry)) expect(fact.source, `${entry.name}: ${fact.term}`).toMatch(/\S{4}/);
  });
  it('are called firm only where they were read or worked out', () => {
    const board = library['plasterboard-dense'];
    if (!board) throw new Error('The dense plasterboard is gone.');
    const facts = Object.fromEntries(materialFacts(board).map((fact) => [fact.term, fact.firm]));
    expect(facts['Loss factor']).toBe(true);
    expect(facts['Density']).toBe(false);
  });
  it('say so when one’s own have no source', () => {
    expect(materialFacts({ ...beginDraft('fill', null), name: 'Mine' })[0]?.source).toMatch(/no source/);
  });
  it('have a field for every number of every kind', () => {
    for (const use of ['board', 'fill', 'interlayer'] as const) {
      const draft = beginDraft(use, null);
      for (const field of DRAFT_FIELDS[draft.kind]) {
        const value = numberOf(draft, field.key);
        expect(value).not.toBeNull();
        expect(value).toBeGreaterThanOrEqual(field.min);
        expect(value).toBeLessThanOrEqual(field.max);
      }
    }
  });
});

describe('starting points', () => {
  for (const point of STARTING_POINTS)
    it(`${point.name} is a make-up that the document takes`, () => {
      const project = example();
      const checked = checkProject({
        ...project,
        assemblies: { ...project.assemblies, new: toAssembly(point, 'New') },
      });
      expect(checked.ok ? [] : checked.faults).toEqual([]);
    });
  it('keep their own name when none is written', () => {
    const [point] = STARTING_POINTS;
    if (!point) throw new Error('There is no starting point.');
    expect(toAssembly(point, '  ').name).toBe(point.name);
  });
});

describe('what a plus sign offers', () => {
  it('is always taken by the document where it is offered', () => {
    const project = example();
    for (const [id, assembly] of Object.entries(project.assemblies))
      for (let index = 0; index <= assembly.layers.length; index += 1)
        for (const { key, layers, unfit } of insertions(assembly.layers, index).filter((it) => it.unfit === null)) {
          const next = { ...assembly, layers: assembly.layers.toSpliced(index, 0, ...layers) };
          const checked = checkProject({ ...project, assemblies: { ...project.assemblies, [id]: next } });
          expect(checked.ok, `${key} at ${index} of ${id}: ${unfit ?? ''}`).toBe(true);
        }
  });
});
