import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Assembly } from '../../../src/engine/assembly/index.ts';
import { structureOf } from '../../../src/engine/assembly/index.ts';
import { createPredictor, massLaw, reductionCap } from '../../../src/engine/transmission/index.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';
import { anyLayup } from '../../support/arbitraryLayup.ts';
import { GYPSUM, LIMP, cavity, frame, layup, sheet } from '../../support/layups.ts';
import { repeatable } from '../../support/repeatable.ts';

const predictor = createPredictor();
const draft = (assembly: Assembly): Prediction => predictor.predict(assembly, { resolution: 'draft' });
/** As if it stood in a wall: bare boards are tested as single sheets otherwise. */
const inWall = (assembly: Assembly): Prediction => predictor.predict(assembly, { size: [4, 2.5], resolution: 'draft' });
const at = (prediction: Prediction, band: number): number => prediction.R[prediction.bands.indexOf(band)] ?? NaN;

describe('any build-up', () => {
  test('gets finite figures: R from 0 to the cap, spreads above 0, no NaN', () => {
    fc.assert(
      fc.property(anyLayup, (assembly) => {
        const prediction = draft(assembly);
        prediction.R.forEach((R, b) => {
          expect(R).toBeGreaterThanOrEqual(0);
          expect(R).toBeLessThanOrEqual(reductionCap(structureOf(assembly), prediction.bands[b] ?? NaN) + 1e-9);
        });
        for (const spread of prediction.spread) expect(spread).toBeGreaterThan(0);
        for (const path of prediction.paths) for (const tau of path.tau) expect(tau).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(prediction.ratingSpread)).toBe(true);
        expect(prediction.leaves.length).toBe(structureOf(assembly).leaves.length);
      }),
      repeatable(21, 60),
    );
  });

  test('insulates the same from both sides', () => {
    fc.assert(
      fc.property(anyLayup, (assembly) => {
        const there = draft(assembly);
        const back = draft({ ...assembly, layers: assembly.layers.toReversed() });
        there.R.forEach((R, b) => expect(Math.abs(R - (back.R[b] ?? NaN))).toBeLessThan(1e-6));
      }),
      repeatable(22, 30),
    );
  });

  test('transmits the sum of its paths', () => {
    fc.assert(
      fc.property(anyLayup, (assembly) => {
        const prediction = draft(assembly);
        prediction.R.forEach((R, b) => {
          const sum = prediction.paths.reduce((total, path) => total + (path.tau[b] ?? NaN), 0);
          expect(Math.abs(10 ** (-R / 10) / Math.min(1, sum) - 1)).toBeLessThan(1e-9);
        });
      }),
      repeatable(23, 30),
    );
  });
});

describe('a limp sheet', () => {
  const R = (millimetres: number, band: number): number =>
    -10 * Math.log10(inWall(layup(sheet(LIMP, millimetres))).paths[0]?.tau[bandIndex(band)] ?? NaN);
  const bandIndex = (band: number): number => draft(layup(sheet(LIMP, 5))).bands.indexOf(band);

  test('gains 5 to 6 dB with every doubling of its mass', () => {
    for (const band of [250, 500, 1000, 2000]) {
      const gain = R(10, band) - R(5, band);
      expect(gain).toBeGreaterThan(5);
      expect(gain).toBeLessThan(6.1);
    }
  });

  test('gains 5 to 6 dB with every doubling of frequency', () => {
    for (const band of [250, 500, 1000]) {
      const gain = R(5, 2 * band) - R(5, band);
      expect(gain).toBeGreaterThan(4.7);
      expect(gain).toBeLessThan(6.1);
    }
  });

  test('lies within 2 dB of the field-incidence mass law', () => {
    const law = massLaw(10, [250, 500, 1000]);
    law.bands.forEach((band, i) => expect(Math.abs(R(5, band) - (law.values[i] ?? NaN))).toBeLessThan(2));
  });
});

test('the mass law gives the handbook figures: 8.4 kg/m² 11, 19 and 25 dB at 100, 250 and 500 Hz', () => {
  expect(massLaw(8.4, [100, 250, 500]).values.map(Math.round)).toEqual([11, 19, 25]);
  expect(massLaw(200, [100, 250, 500]).values.map(Math.round)).toEqual([39, 47, 53]);
});

describe('small changes', () => {
  test('of the gauge of steel studs change R little: nowhere a jump', () => {
    const wall = (gauge: number): Assembly =>
      layup(sheet(GYPSUM, 12.5), cavity(92, 92, frame({ stud: 'steel', gauge })), sheet(GYPSUM, 12.5));
    let before = draft(wall(0.0004));
    for (let gauge = 0.00042; gauge < 0.0016; gauge += 0.00002) {
      const now = draft(wall(gauge));
      now.R.forEach((R, b) => expect(Math.abs(R - (before.R[b] ?? NaN))).toBeLessThan(2.5));
      before = now;
    }
    expect(at(draft(wall(0.0005)), 500)).toBeGreaterThan(at(draft(wall(0.0012)), 500) + 3);
  });

  test('of draft against full resolution are below 1 dB for light walls', () => {
    const wall = layup(sheet(GYPSUM, 12.5), cavity(70, 70), sheet(GYPSUM, 15));
    const full = predictor.predict(wall);
    draft(wall).R.forEach((R, b) => expect(Math.abs(R - (full.R[b] ?? NaN))).toBeLessThan(1));
  });

  test('a size is taken at its word: a smaller part passes less bass per area', () => {
    const wall = layup(sheet(LIMP, 5));
    const small = predictor.predict(wall, { size: [0.6, 0.6], resolution: 'draft' });
    expect(at(small, 63)).toBeGreaterThan(at(draft(wall), 63) + 2);
  });
});

test('nothing to predict is refused in words', () => {
  expect(() => draft(layup(cavity(50, 50)))).toThrow('assembly must have at least one board, got none in "layup"');
});
