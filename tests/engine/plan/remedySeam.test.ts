import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../src/engine/evaluate.ts';
import { remedied } from '../../../src/engine/plan/index.ts';
import { applyRemedy } from '../../../src/project/commands/applyRemedy.ts';
import type { AssemblyEntry, LayerEntry, Project } from '../../../src/project/schema.ts';
import { FORMAT } from '../../../src/project/schema.ts';
import { toAssembly } from '../../../src/project/toEngine.ts';

const board: LayerEntry = { kind: 'board', material: 'plasterboard-standard', thickness_mm: 12.5 };
const pane: LayerEntry = { kind: 'board', material: 'glass', thickness_mm: 6 };
const brick: LayerEntry = { kind: 'board', material: 'brick', thickness_mm: 102.5 };
const gap = (depth_mm: number, more = {}): LayerEntry => ({ kind: 'cavity', depth_mm, ...more });
const timber = { stud: 'timber', arrangement: 'common', fixing: 'direct', spacing_mm: 600 };
const entry = (name: string, ...layers: LayerEntry[]): AssemblyEntry => ({ name, layers });

const project: Project = {
  format: FORMAT,
  name: 'remedies',
  assemblies: {
    triple: entry('Three leaves', board, gap(100, { frame: timber }), board, gap(50), brick),
    empty: entry('Empty gap', board, board, gap(150), board, board),
    thin: entry('Thin lining', board, gap(25, { fill: { material: 'mineral-wool-16', thickness_mm: 25 } }), brick),
    panes: entry('Equal panes', pane, gap(16), pane),
  },
  surfaces: [],
};

describe('a remedy put into the document is what the note predicted', () => {
  const evaluator = createEvaluator();
  const cases = Object.entries(project.assemblies).flatMap(([id, made]) => {
    const assembly = toAssembly(made, project);
    return evaluator
      .predict(assembly, 'full')
      .notes.flatMap(({ code, remedy }) => (remedy ? [{ id, code, remedy, assembly }] : []));
  });
  it('has one remedy of each kind to try', () => {
    expect(new Set(cases.map(({ remedy }) => remedy.kind))).toEqual(
      new Set(['reorder', 'fill-cavity', 'deepen', 'thicken']),
    );
  });
  it.each(cases)('$id: $code', ({ id, remedy, assembly }) => {
    const after = applyRemedy.apply(project, { assembly: id, remedy, id: 'rebuilt' });
    const rebuilt = after.assemblies['rebuilt'];
    if (!rebuilt) throw new Error('the remedy made nothing');
    const inDocument = evaluator.predict(toAssembly(rebuilt, after), 'full');
    const predicted = evaluator.predict(remedied(assembly, remedy), 'full');
    inDocument.R.forEach((R, b) => {
      expect(R).toBeCloseTo(predicted.R[b] ?? Number.NaN, 2);
    });
  });
});
