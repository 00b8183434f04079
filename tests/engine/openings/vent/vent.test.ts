import { describe, expect, it } from 'vitest';
import {
  boxFaults,
  estimatedBoxSound,
  holeTransmissions,
  solveBoxWhole,
  ventBoxGeometry,
  ventTransmission,
  wantedDifference,
  waveBoxSound,
  withVents,
} from '../../../../src/engine/openings/index.ts';
import type { VentElement, VentPath, VentPorts } from '../../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES } from '../../../../src/engine/quantities/index.ts';
import { NOISE_OCTAVES, noiseCriterion, noiseRating } from '../../../../src/engine/ratings/index.ts';
import { labyrinth, section } from './labyrinth.ts';

const duct = (length: number, lined: boolean, place: 'inside' | 'wall' = 'wall'): VentElement => ({
  kind: 'duct',
  name: 'Duct',
  section,
  length,
  roughness: 1e-4,
  lossFactor: 1,
  lining: lined ? { thickness: 0.05, airflowResistivity: 10_000 } : null,
  place,
  wall: { assembly: null, surfaceMass: 5 },
});
const boxed = (mass: number): VentElement => ({
  kind: 'box',
  name: 'Box',
  box: labyrinth,
  place: 'inside',
  casing: { assembly: null, surfaceMass: mass },
});
const path = (...elements: VentElement[]): VentPath => ({ id: 'v', name: 'Vent', direction: 'supply', elements });
const rough: VentPorts = { boxSound: estimatedBoxSound, reduction: () => [] };
const solved = waveBoxSound(labyrinth, solveBoxWhole);
const exact: VentPorts = { boxSound: () => solved, reduction: () => [] };
const from = THIRD_OCTAVES.indexOf(50);
const to = THIRD_OCTAVES.indexOf(5000) + 1;

describe('a vent that is a plain hole', () => {
  const vent = ventTransmission(path(duct(0.2, false)), rough);

  it('passes what a hole of its size passes, and no insertion loss', () => {
    const tau = holeTransmissions(0.125, 0.2, THIRD_OCTAVES, 'diffuse');
    tau.slice(from, THIRD_OCTAVES.indexOf(500)).forEach((t, i) => {
      const R = -10 * Math.log10((vent.openArea[from + i] ?? 0) / vent.area);
      expect(Math.abs(R + 10 * Math.log10(t))).toBeLessThan(0.6);
    });
    vent.insertionLoss.slice(from, to).forEach((loss) => expect(Math.abs(loss)).toBeLessThan(0.1));
    expect(vent.ways).toHaveLength(1);
  });

  it('hears the same from both sides: the path turned round passes as much', () => {
    const there = ventTransmission(path(duct(0.2, false), duct(1, true), duct(0.1, false)), rough);
    const back = ventTransmission(path(duct(0.1, false), duct(1, true), duct(0.2, false)), rough);
    there.ways[0]?.openArea.forEach((passed, b) => {
      expect(passed / (back.ways[0]?.openArea[b] ?? 0)).toBeCloseTo(1, 6);
    });
  });
});

describe('a vent with a lined duct', () => {
  it('gains with length until its joints tell', () => {
    const short = ventTransmission(path(duct(0.5, true)), rough);
    const long = ventTransmission(path(duct(1.5, true)), rough);
    const i = THIRD_OCTAVES.indexOf(500);
    expect((long.insertionLoss[i] ?? 0) - (short.insertionLoss[i] ?? 0)).toBeGreaterThan(8);
    expect(Math.max(...long.insertionLoss.slice(from, to))).toBeLessThan(50.5);
  });

  it('that stands in the room leaks through its wall, the more the lighter that is', () => {
    const heavy = ventTransmission(path(duct(1, true, 'inside')), rough);
    expect(heavy.ways.map(({ kind }) => kind)).toEqual(['air', 'duct-wall', 'joints']);
    expect(heavy.limiting[THIRD_OCTAVES.indexOf(500)]).toBe('duct-wall');
  });
});

describe('a baffled box between two ducts', () => {
  it('is a box that can be solved', () => expect(boxFaults(ventBoxGeometry(labyrinth))).toEqual([]));

  it('has along the air the R of an independent wave solution (reference/lined-box, B07)', () => {
    const known = [
      -2.362, -8.392, 6.318, -1.377, -0.846, 3.678, 12.624, 29.236, 46.577, 42.325, 32.818, 35.256, 34.795, 51.883,
      70.458, 70.163, 50.056, 45.656, 53.704, 66.374, 62.851,
    ];
    const vent = ventTransmission(path(duct(0.1, false), boxed(13), duct(0.1, false)), exact);
    // that solution takes the partitions as rigid; what they add is told apart
    const R = vent.bands.map(
      (_, b) => -10 * Math.log10((vent.ways[0]?.openArea[b] ?? 0) / vent.area) + (vent.partitions[b] ?? 0),
    );
    known.forEach((value, i) => expect(Math.abs((R[from + i] ?? 0) - value)).toBeLessThan(i < 16 ? 0.6 : 1.3));
  });

  it('is limited by its boards in the middle, and a heavier casing helps', () => {
    const light = ventTransmission(path(boxed(6), duct(0.2, false)), exact);
    const heavy = ventTransmission(path(boxed(26), duct(0.2, false)), exact);
    const i = THIRD_OCTAVES.indexOf(1000);
    expect(light.limiting[i]).toBe('casing');
    expect((heavy.normalisedDifference[i] ?? 0) - (light.normalisedDifference[i] ?? 0)).toBeGreaterThan(8);
    expect(heavy.ratings.Rw ?? 0).toBeGreaterThan(light.ratings.Rw ?? 99);
  });

  it('may be worse than the hole in the bass, and says so', () => {
    const vent = ventTransmission(path(duct(0.1, false), boxed(40), duct(0.1, false)), exact);
    expect(Math.min(...vent.insertionLoss.slice(from, THIRD_OCTAVES.indexOf(160)))).toBeLessThan(-3);
  });

  it('is estimated to 3 dB rms up to 200 Hz, roughly above, and marked', () => {
    const guess = ventTransmission(path(boxed(13), duct(0.2, false)), rough);
    expect(guess.estimate).toBe(true);
    expect(guess.spread[THIRD_OCTAVES.indexOf(500)]).toBe(12);
    const off = estimatedBoxSound(labyrinth).transmission.map(
      (t, i) => 10 * Math.log10(t / (solved.transmission[i] ?? 1)),
    );
    const rms = (values: readonly number[]): number => Math.hypot(...values) / Math.sqrt(values.length);
    expect(rms(off.slice(0, 7))).toBeLessThan(3);
    expect(rms(off.slice(7))).toBeLessThan(18);
  });
});

describe('what a vent must reach', () => {
  it('is Dn,e 70.1 dB for one vent in 12 m² of R 65 that may lose 1 dB', () => {
    expect(wantedDifference(65, 12, 1, 1)).toBeCloseTo(70.1, 1);
  });

  it('costs just the allowed part when it is reached', () => {
    const Dne = wantedDifference(55, 10, 1, 2);
    expect(withVents(55, 10, [Dne, Dne])).toBeCloseTo(54, 9);
  });
});

describe('noise', () => {
  it('is rated by the curves it touches', () => {
    expect(NOISE_OCTAVES).toHaveLength(8);
    expect(noiseRating([47, 35, 26, 19, 15, 12, 9, 7])).toBeCloseTo(15, 0);
    expect(noiseCriterion([51, 40, 33, 26, 22, 19, 17, 16])).toBe(20);
    expect(noiseCriterion([20, 20, 20, 20, 10, 10, 5, 5])).toBeNull();
  });
});
