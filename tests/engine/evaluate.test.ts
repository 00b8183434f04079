import { describe, expect, it } from 'vitest';
import type { Assembly } from '../../src/engine/assembly/index.ts';
import { createEvaluator } from '../../src/engine/evaluate.ts';
import type { Build, Part } from '../../src/engine/shell/index.ts';
import { assembly, board, brick, filled, gap, glass, studs } from './plan/assemblies.ts';
import { build, part } from './shell/builds.ts';

const wallOf = (thickness: number): Assembly =>
  assembly(board(thickness), board(0.0125), gap(0.1, { frame: studs, ...filled(0.09) }), board(), board());
const made = (id: string, kind: Part['kind'], width: number, height: number, one: Assembly): Part => ({
  ...part(id, width * height, { kind: 'assembly', assembly: one }, kind),
  width,
  height,
});

/** A garden room: four walls, roof, floor, door, window, vent, two gaps and a hole. */
const room = (thickness: number): Build => {
  const wall = wallOf(thickness);
  const pane = assembly(board(0.006, glass), gap(0.016), board(0.0088, glass));
  return build([
    made('north', 'wall', 5, 2.4, wall),
    made('east', 'wall', 4, 2.4, assembly(board(), gap(0.05, filled(0.05)), board(0.1025, brick))),
    made('south', 'wall', 5, 2.4, assembly(board(0.015), gap(0.09, { frame: studs }), board(0.018))),
    made('west', 'wall', 4, 2.4, assembly(board(), board(), gap(0.15, filled(0.1)), board())),
    made('roof', 'roof', 5, 4, assembly(board(0.015), board(0.015), gap(0.2, filled(0.15)), board(0.018))),
    made('floor', 'floor', 5, 4, assembly(board(0.1, brick))),
    made('door', 'door', 0.9, 2, assembly(board(0.044))),
    made('window', 'window', 1, 1, pane),
    part(
      'vent',
      0.02,
      { kind: 'measured', quantity: 'Dne', curve: { bands: [125, 250, 500, 1000], values: [30, 32, 38, 44] } },
      'vent',
    ),
    part('undercut', 0.0045, { kind: 'slit', length: 0.9, width: 0.005, depth: 0.044, edge: true }, 'slit'),
    part('jamb', 0.002, { kind: 'slit', length: 2, width: 0.001, depth: 0.044, edge: false }, 'slit'),
    part('cable', 0.0003, { kind: 'hole', diameter: 0.02, depth: 0.12 }, 'hole'),
  ]);
};

describe('the evaluator', () => {
  it('gives the same answer to the same question, new or remembered', () => {
    const evaluator = createEvaluator();
    const first = evaluator.shell(room(0.0125), 'draft');
    expect(evaluator.shell(room(0.0125), 'draft')).toEqual(first);
    expect(createEvaluator().shell(room(0.0125), 'draft')).toEqual(first);
  });
  it('notices every change of content: a layer, a size, a resolution', () => {
    const evaluator = createEvaluator();
    const before = evaluator.shell(room(0.0125), 'draft');
    expect(evaluator.shell(room(0.02), 'draft').R).not.toEqual(before.R);
    const wider: Build = {
      ...room(0.0125),
      parts: room(0.0125).parts.map((one) => (one.id === 'north' ? { ...one, width: 8, area: 19.2 } : one)),
    };
    expect(evaluator.shell(wider, 'draft').area).toBeCloseTo(before.area + 7.2, 9);
    expect(evaluator.predict(wallOf(0.0125), 'draft').resolution).toBe('draft');
    expect(evaluator.predict(wallOf(0.0125), 'full').resolution).toBe('full');
  });
  it('a name alone changes no figure', () => {
    const evaluator = createEvaluator();
    const named = evaluator.predict({ ...wallOf(0.0125), name: 'another' }, 'full');
    expect(named.R).toEqual(evaluator.predict(wallOf(0.0125), 'full').R);
  });
  it('notes come at rest, not while something is being dragged', () => {
    const evaluator = createEvaluator();
    const lined = assembly(board(), gap(0.025, filled(0.025)), board(0.1025, brick));
    expect(evaluator.predict(lined, 'draft').notes).toEqual([]);
    expect(evaluator.predict(lined, 'full').notes.map(({ code }) => code)).toContain('thin-lining');
    expect(evaluator.shell(room(0.0125), 'draft').notes).toEqual([]);
    const codes = evaluator.shell(room(0.0125), 'full').notes.map(({ code }) => code);
    expect(codes).toContain('open-gap');
    expect(codes).toContain('load-overhead');
  });
  it('one edit of a build of twelve parts costs less than a third of evaluating it afresh', () => {
    const timed = (evaluate: () => unknown): number => {
      const began = performance.now();
      evaluate();
      return performance.now() - began;
    };
    const evaluator = createEvaluator();
    evaluator.shell(room(0.0125), 'draft');
    // the least of several, so that a busy machine does not decide
    const edits = Array.from({ length: 7 }, (_, i) => timed(() => evaluator.shell(room(0.013 + i * 0.0005), 'draft')));
    const afresh = Array.from({ length: 3 }, () => timed(() => createEvaluator().shell(room(0.0125), 'draft')));
    expect(room(0.0125).parts).toHaveLength(12);
    expect(Math.min(...edits)).toBeLessThan(Math.min(...afresh) / 3);
  });
  it('a swap is predicted as the part built that way', () => {
    const evaluator = createEvaluator();
    const heavier = wallOf(0.03);
    const candidate = {
      id: 'heavier',
      name: 'Heavier',
      element: { kind: 'assembly' as const, assembly: heavier },
      price: { materials: 300, labour: null, illustrative: true },
    };
    const parts = room(0.0125).parts.map((one) => (one.id === 'north' ? { ...one, candidates: [candidate] } : one));
    const [rung] = evaluator.plan({ ...room(0.0125), parts }, 'draft').rungs;
    const now = evaluator.shell(room(0.0125), 'draft');
    const then = evaluator.shell(room(0.03), 'draft');
    expect(rung?.bassGain).toBeCloseTo(then.bassR - now.bassR, 9);
    expect(rung?.addedThickness).toBeCloseTo(0.0175, 9);
    expect(rung?.addedMass).toBeCloseTo(0.0175 * 672 * 12, 6);
  });
});
