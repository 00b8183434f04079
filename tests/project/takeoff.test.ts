import { describe, expect, it } from 'vitest';
import boatStore from '../../assets/examples/boat-store.json' with { type: 'json' };
import { checkProject } from '../../src/project/check.ts';
import type { OpeningEntry, VentElementEntry, VentEntry } from '../../src/project/schema.ts';
import { sealedJoints } from '../../src/project/sealTakeoff.ts';
import { boxTakeoffs } from '../../src/project/ventTakeoff.ts';

const checked = checkProject(boatStore);
if (!checked.ok) throw new Error('the example must be in order');
const { project } = checked;

const box: Extract<VentElementEntry, { kind: 'box' }> = {
  kind: 'box',
  length_m: 1,
  width_m: 0.5,
  height_m: 0.2,
  partitions: [],
  ports: [
    { side: 'left', at_m: 0.25, section: { shape: 'round', diameter_mm: 100 } },
    { side: 'right', at_m: 0.25, section: { shape: 'round', diameter_mm: 100 } },
  ],
  place: 'inside',
};
const vent = (element: VentElementEntry): VentEntry => ({
  id: 'v',
  name: 'Vent',
  opening: 'vent-in',
  direction: 'supply',
  elements: [{ kind: 'grille', section: { shape: 'round', diameter_mm: 100 } }, element],
});

describe('boxes of a vent with what they are put together of', () => {
  it('weighs a box of one board of 18 mm by area and mass', () => {
    const [found] = boxTakeoffs(project, vent(box));
    // 12 kg/m² are told where nothing is: wood board of 18 mm
    expect(found?.byMass).toBe(true);
    expect(found?.casing).toEqual([
      { name: 'Wood board', thickness_mm: expect.closeTo(18, 6) as number, kg_m2: 12, board: true },
    ]);
    const area = 2 * 1.036 * 0.536 + 2 * 1.036 * 0.2 + 2 * 0.5 * 0.2;
    expect(found?.mass).toBeCloseTo(12 * area, 6);
    expect(found?.element).toBe(1);
  });

  it('turns a make-up round for a box in the room: its first layer is outermost', () => {
    const two = {
      ...project,
      assemblies: {
        ...project.assemblies,
        two: {
          name: 'Two boards',
          layers: [
            { kind: 'board' as const, material: 'plasterboard-dense', thickness_mm: 15 },
            { kind: 'board' as const, material: 'osb', thickness_mm: 18 },
          ],
        },
      },
    };
    const thicknesses = (place: 'inside' | 'outside'): readonly number[] | undefined =>
      boxTakeoffs(two, vent({ ...box, place, casing: 'two' }))[0]?.casing.map(({ thickness_mm }) => thickness_mm);
    expect(thicknesses('inside')).toEqual([18, 15]);
    expect(thicknesses('outside')).toEqual([15, 18]);
  });
});

describe('joints of a door with the seals to buy', () => {
  const door: Exclude<OpeningEntry, { kind: 'slit' | 'hole' }> = {
    id: 'door',
    name: 'Door',
    kind: 'door',
    width_m: 0.9,
    height_m: 2,
    assembly: 'door-pair',
    seals: { perimeter: 'double-compression', threshold: 'none', threshold_gap_mm: 4 },
  };
  it('counts sides and head, twice for two lines of seal, and none for an open joint', () => {
    expect(sealedJoints(door)).toEqual([
      expect.objectContaining({ leaf: 'first', joint: 'perimeter', length: 4.9, seal: 9.8 }),
      expect.objectContaining({ leaf: 'first', joint: 'threshold', length: 0.9, seal: 0, asGap: 4 }),
    ]);
  });
  it('counts the joints of a second leaf by themselves', () => {
    const second = {
      assembly: 'door-pair',
      gap_mm: 300,
      lined: false,
      seals: { perimeter: 'foam', threshold: 'brush' },
    } as const;
    const joints = sealedJoints({ ...door, second });
    expect(joints.map(({ leaf, quality }) => [leaf, quality])).toEqual([
      ['first', 'double-compression'],
      ['first', 'none'],
      ['second', 'foam'],
      ['second', 'brush'],
    ]);
    // EN ISO 10140-1 form: a joint of Rs 30 dB is as open as a slit of 1 mm
    expect(joints[2]?.asGap).toBeCloseTo(1, 10);
  });
});
