import { describe, expect, it } from 'vitest';
import { solveBoxCoarse, ventTransmission, waveBoxSound } from '../../../../src/engine/openings/index.ts';
import type { VentBox, VentElement, VentPath, VentPorts } from '../../../../src/engine/openings/index.ts';
import type { Section } from '../../../../src/engine/quantities/index.ts';

const ports: VentPorts = { boxSound: (box) => waveBoxSound(box, solveBoxCoarse), reduction: () => [] };
const round = (diameter: number): Section => ({ shape: 'round', diameter });
const slot: Section = { shape: 'rectangular', width: 0.3, height: 0.06 };
const wool = { thickness: 0.05, airflowResistivity: 10_000 };
const path = (elements: readonly VentElement[]): VentPath => ({
  id: 'v',
  name: 'Vent',
  direction: 'extract',
  elements,
});
const duct = (section: Section, length: number, lined = false): VentElement => ({
  kind: 'duct',
  name: 'Duct',
  section,
  length,
  roughness: 1e-4,
  lossFactor: 1,
  lining: lined ? wool : null,
  place: 'inside',
  wall: { assembly: null, surfaceMass: 4 },
});
const lopsided: VentBox = {
  length: 0.7,
  width: 0.4,
  height: 0.2,
  partitions: [{ at: 0.25, thickness: 0.012, gap: 0.12, side: 'N' }],
  lining: { ...wool, thickness: 0.025, faces: false },
  ports: [
    { side: 'W', at: 0.15, across: 0, section: round(0.1) },
    { side: 'E', at: 0.25, across: 0, section: round(0.16) },
  ],
};
const boxed = (box: VentBox, place: 'inside' | 'outside' = 'inside'): VentElement => ({
  kind: 'box',
  name: 'Box',
  box,
  place,
  casing: { assembly: null, surfaceMass: 15 },
});
const fan: VentElement = {
  kind: 'fan',
  name: 'Fan',
  section: round(0.1),
  curve: { flows: [0, 0.03], pressures: [100, 0] },
  soundPower: null,
  type: 'axial',
};

const kinds: readonly (readonly [string, readonly VentElement[]])[] = [
  ['a fan alone', [fan]],
  ['a slotted grille', [{ kind: 'grille', name: 'Grille', section: slot, freeShare: 0.4 }]],
  ['a clogged mesh', [{ kind: 'mesh', name: 'Mesh', section: round(0.1), freeShare: 0.05 }]],
  ['a cowl', [{ kind: 'cowl', name: 'Cowl', section: round(0.1), loss: 1.5 }]],
  ['a very narrow duct', [duct(round(0.02), 30, true)]],
  ['a very wide duct', [duct(round(1), 0.01)]],
  [
    'a taper between two ducts',
    [duct(round(0.1), 0.5), { kind: 'transition', name: 'Taper', section: slot, length: 0.3 }, duct(slot, 1, true)],
  ],
  [
    'bends of every form',
    (['mitred', 'vaned', 'tight', 'smooth'] as const).map((form) => ({
      kind: 'bend',
      name: form,
      section: slot,
      angle: 90,
      form,
      lining: wool,
    })),
  ],
  ['a bare box', [boxed({ ...lopsided, partitions: [], lining: null })]],
  ['a box lined on its faces, outside', [boxed({ ...lopsided, lining: { ...wool, faces: true } }, 'outside')]],
];

describe('a vent', () => {
  it.each(kinds)('that is %s has a figure in every band', (_what, elements) => {
    const { normalisedDifference, insertionLoss, openArea, limiting } = ventTransmission(path(elements), ports);
    for (const values of [normalisedDifference, insertionLoss, openArea]) {
      expect(values).toHaveLength(27);
      expect(values.every(Number.isFinite)).toBe(true);
    }
    expect(openArea.every((area) => area > 0)).toBe(true);
    expect(limiting).toHaveLength(27);
  });

  it('must have a piece', () => {
    expect(() => ventTransmission(path([]), ports)).toThrow('vent path must have at least 1 piece, got 0');
  });

  it('lets the plane wave through alike from both sides, also through a lopsided box', () => {
    const [first, second] = lopsided.ports;
    const there = path([duct(round(0.1), 0.3), boxed(lopsided), duct(round(0.16), 0.2)]);
    // the same box with its ducts exchanged
    const turned: VentBox = { ...lopsided, ports: [second, first] };
    const back = path([duct(round(0.16), 0.2), boxed(turned), duct(round(0.1), 0.3)]);
    const [one, other] = [there, back].map((it) => ventTransmission(it, ports).ways[0]?.openArea ?? []);
    // below the wider duct's second mode both are the plane wave alone
    for (let b = 3; b <= 16; b += 1) {
      const difference = 10 * Math.log10((one?.[b] ?? 0) / (other?.[b] ?? 1));
      expect(Math.abs(difference)).toBeLessThan(0.05);
    }
  });

  it('leaks as much through a casing outside as inside, when all else is mirrored', () => {
    const symmetric: VentBox = {
      ...lopsided,
      partitions: [],
      ports: [
        { side: 'W', at: 0.2, across: 0, section: round(0.125) },
        { side: 'E', at: 0.2, across: 0, section: round(0.125) },
      ],
    };
    const wall = duct(round(0.125), 0.3);
    const inside = ventTransmission(path([boxed(symmetric), wall]), ports);
    const outside = ventTransmission(path([wall, boxed(symmetric, 'outside')]), ports);
    const casing = (vent: typeof inside): readonly number[] =>
      vent.ways.find(({ kind }) => kind === 'casing')?.openArea ?? [];
    casing(inside).forEach((area, b) => expect(area / (casing(outside)[b] ?? 1)).toBeCloseTo(1, 3));
  });
});
