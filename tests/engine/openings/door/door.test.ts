import { describe, expect, it } from 'vitest';
import { fittedPanel, lobbyTransmission, sealLeaks, serviceLeak } from '../../../../src/engine/openings/index.ts';
import type { Fittings, Leaf, Seals } from '../../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES } from '../../../../src/engine/quantities/index.ts';
import { rateThirdOctaves } from '../../../../src/engine/ratings/index.ts';
import { massLaw } from '../../../../src/engine/transmission/index.ts';

const size = { width: 0.9, height: 2 };
const area = size.width * size.height;
const leaf: Leaf = { R: massLaw(30, THIRD_OCTAVES).values.map((R) => Math.min(R, 33)), surfaceMass: 30 };
const none: Fittings = { seals: null, keyhole: false, letterPlate: 'none', second: null, items: [] };
const seals = (perimeter: Seals['perimeter'], threshold: Seals['threshold']): Seals => ({
  perimeter,
  threshold,
  perimeterGap: 0.003,
  thresholdGap: 0.006,
});
const rated = (fittings: Partial<Fittings>): number => {
  const { openArea } = fittedPanel(leaf, { ...none, ...fittings }, size, THIRD_OCTAVES, () => leaf);
  const values = openArea.map((passed) => -10 * Math.log10(passed / area));
  return rateThirdOctaves({ bands: THIRD_OCTAVES, values }).Rw ?? 0;
};

describe('joints of a door', () => {
  it('cost nothing where they are not described', () => {
    const { openArea, ways } = fittedPanel(leaf, none, size, THIRD_OCTAVES, () => leaf);
    openArea.forEach((passed, b) => expect(passed).toBeCloseTo(area * 10 ** (-(leaf.R[b] ?? 0) / 10), 12));
    expect(ways.map(({ name }) => name)).toEqual(['The leaf itself']);
  });

  it('bring an ordinary door without seals near 15 dB, and one with good seals above 26 (common practice)', () => {
    expect(rated({ seals: seals('none', 'none') })).toBeGreaterThan(10);
    expect(rated({ seals: seals('none', 'none') })).toBeLessThan(21);
    expect(rated({ seals: seals('compression', 'drop') })).toBeGreaterThan(26);
  });

  it('are better in this order: none, brush, foam, compression, two compressions', () => {
    const order = (['none', 'brush', 'foam', 'compression', 'double-compression'] as const).map((quality) =>
      rated({ seals: seals(quality, quality) }),
    );
    order.forEach((Rw, i) => expect(Rw).toBeGreaterThanOrEqual(order[i - 1] ?? 0));
    expect((order.at(-1) ?? 0) - (order[0] ?? 0)).toBeGreaterThan(8);
  });

  it('leak by the metre: twice the length lets twice as much through', () => {
    const [one] = sealLeaks(seals('foam', 'drop'), 1, 1, THIRD_OCTAVES);
    const [two] = sealLeaks(seals('foam', 'drop'), 2, 2, THIRD_OCTAVES);
    expect((two?.openArea[9] ?? 0) / (one?.openArea[9] ?? 1)).toBeCloseTo(2, 9);
  });

  it('are told apart in the breakdown, which adds up', () => {
    const fittings: Fittings = { ...none, seals: seals('foam', 'brush'), keyhole: true, letterPlate: 'plain' };
    const { openArea, ways } = fittedPanel(leaf, fittings, size, THIRD_OCTAVES, () => leaf);
    expect(ways).toHaveLength(5);
    const sum = ways.reduce((all, way) => all + (way.openArea[16] ?? 0), 0);
    expect(openArea[16]).toBeCloseTo(sum, 12);
  });
});

describe('two doors', () => {
  const second = (gap: number, lined: boolean) => ({
    assembly: { name: 'Second', layers: [] },
    gap,
    lined,
    seals: seals('compression', 'drop'),
  });

  it('of 30 to 33 dB, 150 mm apart and lined, give 45 to 52 dB (common practice)', () => {
    const Rw = rated({ seals: seals('compression', 'drop'), second: second(0.15, true) });
    expect(Rw).toBeGreaterThanOrEqual(43);
    expect(Rw).toBeLessThanOrEqual(53);
  });

  it('gain by absorber in the reveal and by a wider gap', () => {
    const at = (gap: number, lined: boolean, frequency: number): number =>
      lobbyTransmission(1e-3, 1e-3, { area, perimeter: 5.8, gap, lined, masses: [30, 30] }, frequency);
    expect(at(0.15, true, 1000)).toBeLessThan(at(0.15, false, 1000));
    expect(at(0.3, true, 125)).toBeLessThan(at(0.15, true, 125));
  });

  it('are never worse than the better of the two by more than what passes the frames', () => {
    for (const frequency of [25, 50, 100, 400, 1600]) {
      const both = lobbyTransmission(
        1e-2,
        1e-4,
        { area, perimeter: 5.8, gap: 0.1, lined: false, masses: [10, 40] },
        frequency,
      );
      expect(both).toBeLessThan(1e-4 + 10 ** -5.4 + 1e-12);
    }
  });
});

describe('sockets, cables, pipes and lights', () => {
  const item = (kind: 'socket-back-to-back' | 'socket-surface' | 'recessed-light' | 'cable', sealed: boolean) => ({
    kind,
    count: 2,
    sealed,
    hole: 0.02,
    through: 0.01,
  });
  const wall = 10 * 10 ** -5.5;
  const cost = (kind: Parameters<typeof item>[0], sealed: boolean, band: number): number => {
    const leak = serviceLeak(item(kind, sealed), THIRD_OCTAVES).openArea[THIRD_OCTAVES.indexOf(band)] ?? 0;
    return 10 * Math.log10((wall + leak) / wall);
  };

  it('cost 10 m² of R 55 some 2 dB above 500 Hz with two sockets back to back, nothing on the surface', () => {
    expect(cost('socket-back-to-back', false, 1000)).toBeGreaterThan(1.5);
    expect(cost('socket-back-to-back', false, 1000)).toBeLessThan(4);
    expect(cost('socket-surface', false, 1000)).toBe(0);
  });

  it('lose most of that when sealed, and light recesses are holes', () => {
    expect(cost('socket-back-to-back', true, 1000)).toBeLessThan(0.3);
    expect(cost('cable', true, 1000)).toBeLessThan(cost('cable', false, 1000));
    expect(cost('recessed-light', false, 1000)).toBeGreaterThan(15);
  });
});
