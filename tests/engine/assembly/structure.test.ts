import { describe, expect, test } from 'vitest';
import { leavesOf, structureOf, surfaceMass, totalThickness } from '../../../src/engine/assembly/index.ts';
import type { Interlayer } from '../../../src/engine/assembly/index.ts';
import { BLOCK, GLASS, GYPSUM, cavity, layup, sheet } from '../../support/layups.ts';

const bond: Interlayer = { kind: 'interlayer', material: 'rigid', thickness: 0.001 };
const compound: Interlayer = {
  kind: 'interlayer',
  material: { kind: 'viscoelastic', name: 'compound', density: 1100, shearModulus: 4e5, lossFactor: 1 },
  thickness: 0.0005,
};

describe('an assembly taken apart', () => {
  const wall = layup(sheet(GYPSUM, 12.5), sheet(GYPSUM, 15), cavity(100, 80), sheet(GYPSUM, 12.5));

  test('has a leaf for every run of boards, screwed together unless said otherwise', () => {
    const leaves = leavesOf(wall);
    expect(leaves.map((leaf) => leaf.layers)).toEqual([[0, 1], [3]]);
    expect(leaves[0]?.joints).toEqual(['screwed']);
    expect(leaves[0]?.surfaceMass).toBeCloseTo(700 * 0.0275, 9);
  });

  test('weighs what its boards and its absorber weigh', () => {
    expect(surfaceMass(wall)).toBeCloseTo(700 * 0.04 + 14 * 0.08, 9);
    expect(totalThickness(wall)).toBeCloseTo(0.14, 9);
  });

  test('knows bonded and damped joints', () => {
    const joints = (middle: Interlayer) => leavesOf(layup(sheet(GYPSUM, 12.5), middle, sheet(GYPSUM, 12.5)))[0]?.joints;
    expect(joints(bond)).toEqual(['rigid']);
    expect(joints(compound)).toEqual([{ material: compound.material, thickness: 0.0005, layer: 1 }]);
  });

  test('keeps absorbers that face a room out of the cavities', () => {
    const faced = structureOf(layup(cavity(50, 50), sheet(GYPSUM, 12.5), cavity(30, 30)));
    expect(faced.cavities).toEqual([]);
    expect(faced.leading?.layers).toEqual([0]);
    expect(faced.trailing?.layers).toEqual([2]);
  });

  test('takes cavities that touch as one', () => {
    const { cavities } = structureOf(layup(sheet(GYPSUM, 12.5), cavity(50), cavity(40, 40), sheet(GYPSUM, 12.5)));
    expect(cavities).toHaveLength(1);
    expect(cavities[0]?.depth).toBeCloseTo(0.09, 9);
  });

  test('tells masonry and glass', () => {
    const leaves = leavesOf(layup(sheet(BLOCK, 100), cavity(50), sheet(GLASS, 6)));
    expect(leaves.map((leaf) => [leaf.masonry, leaf.glass])).toEqual([
      [true, false],
      [false, true],
    ]);
  });
});
