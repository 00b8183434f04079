import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chanceOfTarget,
  createGenerator,
  intervalOf,
  latinHypercube,
  normalHypercube,
  normalQuantile,
} from '../../../src/engine/uncertainty/index.ts';

describe('draws', () => {
  test('of a Latin hypercube put exactly one sample in each stratum of every dimension', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 6 }),
        fc.nat(),
        (samples, dims, start) => {
          for (const column of latinHypercube(samples, dims, createGenerator(start))) {
            const strata = Array.from(column, (u) => Math.floor(u * samples)).sort((a, b) => a - b);
            expect(strata).toEqual(Array.from({ length: samples }, (_, i) => i));
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('are the same from the same start and others from another', () => {
    const draw = (start: number): number[] => Array.from(latinHypercube(50, 1, createGenerator(start))[0] ?? []);
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
  });

  test('of two dimensions are not tied to each other', () => {
    const [a, b] = normalHypercube(4000, 2, createGenerator(3));
    const product = a?.reduce((sum, z, i) => sum + z * (b?.[i] ?? 0), 0) ?? NaN;
    expect(Math.abs(product / 4000)).toBeLessThan(0.05);
  });

  test('are standard normal', () => {
    const [column] = normalHypercube(4000, 1, createGenerator(5));
    const square = column?.reduce((sum, z) => sum + z * z, 0) ?? NaN;
    expect(square / 4000).toBeCloseTo(1, 1);
  });

  test('reach the quantiles of printed normal tables (common practice)', () => {
    for (const [p, z] of [
      [0.5, 0],
      [0.75, 0.67449],
      [0.95, 1.64485],
      [0.975, 1.95996],
      [0.999, 3.09023],
    ] as const) {
      expect(normalQuantile(p)).toBeCloseTo(z, 4);
      expect(normalQuantile(1 - p)).toBeCloseTo(-z, 4);
    }
    expect(() => normalQuantile(1)).toThrow('probability must be > 0 and < 1, got 1');
  });

  test('give percentiles in order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 90, noNaN: true }), { minLength: 1, maxLength: 60 }),
        (values) => {
          const { p5, p25, p50, p75, p95 } = intervalOf(Float64Array.from(values));
          expect([p5, p25, p50, p75, p95].toSorted((a, b) => a - b)).toEqual([p5, p25, p50, p75, p95]);
        },
      ),
    );
  });
});

describe('chance of meeting a target', () => {
  test('never grows with the target', () => {
    const tally = fc.array(fc.tuple(fc.integer({ min: 20, max: 70 }), fc.integer({ min: 1, max: 99 })));
    fc.assert(
      fc.property(tally, fc.integer({ min: 20, max: 70 }), fc.integer({ min: 1, max: 10 }), (counts, target, more) => {
        expect(chanceOfTarget(counts, target + more)).toBeLessThanOrEqual(chanceOfTarget(counts, target));
        expect(chanceOfTarget(counts, target)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('counts the draws that reach it', () => {
    expect(
      chanceOfTarget(
        [
          [49, 1],
          [50, 2],
          [51, 1],
        ],
        50,
      ),
    ).toBe(0.75);
  });
});
