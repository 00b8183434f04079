import { expect, test } from 'vitest';
import { predictAssembly } from '../../../src/engine/transmission/index.ts';
import { edgeLossOf } from '../../../src/engine/transmission/leafStiffness.ts';
import { structureOf } from '../../../src/engine/assembly/index.ts';
import type { Assembly } from '../../../src/engine/assembly/index.ts';
import type { BoardMaterial } from '../../../src/engine/materials/index.ts';
import { leafModel } from '../../../src/engine/transmission/leafModel.ts';

const board = (family: BoardMaterial['family'], density: number, youngsModulus: number): BoardMaterial => ({
  kind: 'board',
  name: family,
  family,
  density,
  youngsModulus,
  poissonRatio: 0.3,
  lossFactor: 0.0125,
});
const gypsum = board('gypsum', 700, 2.1e9);
const plywood = board('wood', 560, 6e9);

const single = (...materials: readonly BoardMaterial[]): Assembly => ({
  name: 'sheet',
  layers: materials.map((material) => ({ kind: 'board', material, thickness: 0.0125 })),
});

const edgeOf = (assembly: Assembly): ((ratio: number) => number) => {
  const leaf = structureOf(assembly).leaves[0];
  if (!leaf) throw new Error('no leaf');
  const model = leafModel(leaf);
  return (ratio) => edgeLossOf(model, ratio * (model.criticalFrequency ?? NaN));
};

test('gypsum boards gain loss above their critical frequency and none below it', () => {
  const edge = edgeOf(single(gypsum));
  expect(edge(0.5)).toBe(0);
  expect(edge(1)).toBeCloseTo(0, 12);
  expect(edge(2)).toBeGreaterThan(0);
  expect(edge(3)).toBeCloseTo(2 * edge(2), 12);
});

test('wood gains none, and a mixed leaf as much as its share of gypsum', () => {
  expect(edgeOf(single(plywood))(3)).toBe(0);
  const share = 700 / (700 + 560);
  expect(edgeOf(single(gypsum, plywood))(3)).toBeCloseTo(share * edgeOf(single(gypsum))(3), 12);
});

test('boards recover above coincidence at least as fast as a constant loss allows: 6 dB an octave and more', () => {
  const { bands, R } = predictAssembly(single(gypsum));
  const at = (band: number): number => R[bands.indexOf(band)] ?? NaN;
  expect(at(10000) - at(5000)).toBeGreaterThan(6);
});
