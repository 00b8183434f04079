import { describe, expect, test } from 'vitest';
import { massAirMassResonance, structureOf } from '../../../src/engine/assembly/index.ts';
import type { Assembly, Frame } from '../../../src/engine/assembly/index.ts';
import { createPredictor, laboratorySize, reductionCap } from '../../../src/engine/transmission/index.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';
import { BLOCK, GLASS, GYPSUM, cavity, frame, layup, sheet } from '../../support/layups.ts';

const predictor = createPredictor();
const predict = (assembly: Assembly): Prediction => predictor.predict(assembly, { resolution: 'draft' });
const R = (prediction: Prediction, band: number): number => prediction.R[prediction.bands.indexOf(band)] ?? NaN;

const CONCRETE = { ...BLOCK, density: 2300, youngsModulus: 3e10, lossFactor: 0 };
const HOLLOW = { ...BLOCK, density: 1237, youngsModulus: 7.4e9 };
const BARS = frame({ stud: 'none', fixing: 'resilient-bar' });
const BATTENS = frame({ spacing: 0.6 });
const FIXINGS: readonly (readonly [string, Frame | undefined])[] = [
  ['nothing', undefined],
  ['bars', BARS],
  ['battens', BATTENS],
];

describe('bare masonry', () => {
  test('of twice the thickness gains 9 dB above coincidence, less what shear takes: its edges lose the same', () => {
    const forced = (millimetres: number): number => {
      const prediction = predict(layup(sheet(CONCRETE, millimetres)));
      const tau = prediction.paths.find((path) => path.key === 'cavity')?.tau[prediction.bands.indexOf(1250)] ?? NaN;
      return -10 * Math.log10(tau);
    };
    for (const millimetres of [60, 70, 80]) {
      const gain = forced(2 * millimetres) - forced(millimetres);
      expect(gain).toBeGreaterThan(7.5);
      expect(gain).toBeLessThan(10.5);
    }
  });

  test('has no hump below its critical frequency', () => {
    for (const [material, millimetres] of [
      [BLOCK, 80],
      [BLOCK, 100],
      [HOLLOW, 140],
      [HOLLOW, 190],
      [CONCRETE, 100],
    ] as const) {
      const { bands, R: values, criticalFrequencies } = predict(layup(sheet(material, millimetres)));
      const [fc = NaN] = criticalFrequencies;
      bands.forEach((band, b) => {
        if (band < fc / 3 || band > fc) return;
        const beside = Math.max(values[b - 1] ?? NaN, values[b + 1] ?? NaN);
        expect((values[b] ?? NaN) - beside).toBeLessThan(2);
      });
    }
  });

  test('is limited by what a laboratory carries past it: flat up to 1 kHz, 3 dB an octave above', () => {
    const wall = structureOf(layup(sheet(CONCRETE, 300)));
    expect(reductionCap(wall, 125)).toBe(reductionCap(wall, 1000));
    expect(reductionCap(wall, 4000) - reductionCap(wall, 1000)).toBeCloseTo(6, 9);
  });
});

describe('a lining on masonry', () => {
  const walls = [sheet(BLOCK, 100), sheet(HOLLOW, 190)];

  test.each(FIXINGS)('on %s changes next to nothing an octave and more below its resonance', (_, fixing) => {
    for (const wall of walls)
      for (const depth of [10, 13, 25]) {
        const gap = cavity(depth, 0, fixing);
        const bare = predict(layup(wall));
        const lined = predict(layup(sheet(GYPSUM, 12.5), gap, wall));
        const f0 = massAirMassResonance(bare.surfaceMass, GYPSUM.density * 0.0125, depth / 1000);
        for (const band of bare.bands)
          if (band < f0 / 2.2) expect(Math.abs(R(lined, band) - R(bare, band))).toBeLessThan(1.5);
      }
  });

  test('on battens gains on both faces what one gains, and more, where air and frame carry little', () => {
    for (const wall of walls)
      for (const depth of [13, 25]) {
        const gap = cavity(depth, 0, BATTENS);
        const board = sheet(GYPSUM, 12.5);
        const [one, both] = [predict(layup(board, gap, wall)), predict(layup(board, gap, wall, gap, board))];
        for (const band of [1600, 2000, 2500]) expect(R(both, band)).toBeGreaterThan(R(one, band) - 0.1);
      }
  });

  test('that nothing holds loses most at its resonance, on both faces about twice as many decibels', () => {
    const [wall] = walls;
    if (!wall) throw new Error('no wall');
    const board = sheet(GYPSUM, 12.5);
    const bare = predict(layup(wall));
    const one = predict(layup(board, cavity(13), wall));
    const both = predict(layup(board, cavity(13), wall, cavity(13), board));
    const worst = (lined: Prediction): number =>
      Math.min(...[125, 160, 200, 250, 315].map((band) => R(lined, band) - R(bare, band)));
    expect(worst(one)).toBeLessThan(-3);
    expect(worst(both)).toBeLessThan(1.5 * worst(one));
    expect(worst(both)).toBeGreaterThan(3 * worst(one));
  });
});

describe('the size a laboratory would take', () => {
  test('is a sheet for bare boards, an opening for panes, a wall for all else', () => {
    const area = (assembly: Assembly): number => {
      const [width, height] = laboratorySize(assembly);
      return width * height;
    };
    expect(area(layup(sheet(GYPSUM, 12.5), sheet(GYPSUM, 12.5)))).toBeCloseTo(2.88, 9);
    expect(area(layup(sheet(GLASS, 6)))).toBeCloseTo(1.82, 2);
    expect(area(layup(sheet(BLOCK, 100)))).toBe(10);
    expect(area(layup(sheet(GYPSUM, 12.5), cavity(70), sheet(GYPSUM, 12.5)))).toBe(10);
  });
});
