import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../src/engine/evaluate.ts';
import { newBuild } from '../../src/project/newBuild.ts';
import { toBuild } from '../../src/project/toEngine.ts';
import { explain } from '../../src/worker/explain/explain.ts';

const project = newBuild({
  name: 'Shed',
  length_m: 4,
  width_m: 3,
  height_m: 2.3,
  shell: 'block-garage',
  source: null,
  neighbour_m: 9,
  budget: null,
  currency: '',
});
const evaluator = createEvaluator();

describe('the working of a change', () => {
  it('arrives at the gains that the ladder lists, though it evaluates the changed build afresh', () => {
    const { rungs } = evaluator.plan(toBuild(project), 'full');
    expect(rungs.length).toBeGreaterThan(3);
    for (const rung of rungs.slice(0, 4)) {
      const working = explain(evaluator, project, { kind: 'swap', part: rung.part, candidate: rung.candidate });
      const [Rw, bass] = [...working.value.replaceAll('\u2212', '-').matchAll(/-?\d+(\.\d+)?/g)].map(([number]) =>
        Number(number),
      );
      expect(working.title).toBe(rung.name);
      expect(Rw).toBe(rung.RwGain);
      expect(bass).toBeCloseTo(rung.bassGain, 1);
    }
  });

  it('says so when the candidate is gone', () => {
    expect(() => explain(evaluator, project, { kind: 'swap', part: 'door', candidate: 'none' })).toThrow(/no longer/);
  });
});
