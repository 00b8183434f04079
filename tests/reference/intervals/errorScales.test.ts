import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { errorScaleOf, independentFigures } from './errorScales.ts';
import type { ScoredFigure } from './errorScales.ts';
import { weightedQuantile } from './weightedQuantile.ts';

describe('quantile of weighted values', () => {
  test('of even weights stands at p·(n + 1), as the definition of Hyndman and Fan says', () => {
    const nineteen = Array.from({ length: 19 }, (_, i) => [i + 1, 1] as const);
    expect(weightedQuantile(nineteen, 0.9, 19)).toBeCloseTo(18, 9);
    expect(weightedQuantile(nineteen, 0.5, 19)).toBeCloseTo(10, 9);
  });

  test('lies among the values and grows with the share', () => {
    const some = fc.array(fc.tuple(fc.double({ min: -9, max: 9, noNaN: true }), fc.double({ min: 0.1, max: 5 })), {
      minLength: 1,
      maxLength: 30,
    });
    fc.assert(
      fc.property(some, fc.double({ min: 0.5, max: 1 }), fc.double({ min: 0.5, max: 1 }), (values, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map((share) =>
          weightedQuantile(values, share, 40),
        );
        expect(low).toBeGreaterThanOrEqual(Math.min(...values.map(([value]) => value)));
        expect(high).toBeLessThanOrEqual(Math.max(...values.map(([value]) => value)));
        expect(low).toBeLessThanOrEqual(high ?? NaN);
      }),
    );
  });
});

describe('bands of one curve', () => {
  test('are worth one figure where they are the same, and as many as they are where they are far apart', () => {
    expect(independentFigures([500, 500, 500])).toBeCloseTo(1, 9);
    expect(independentFigures([63, 8000])).toBeCloseTo(2, 3);
    expect(independentFigures([125, 250, 500, 1000])).toBeGreaterThan(2);
    expect(independentFigures([125, 250, 500, 1000])).toBeLessThan(4);
  });
});

describe('the error of the method learned from figures', () => {
  const ratings = (constructionClass: string, scores: readonly number[]): ScoredFigure[] =>
    scores.map((score, i) => ({ id: `${constructionClass} ${i}`, constructionClass, band: null, score }));
  const even = (count: number, most: number): number[] =>
    Array.from({ length: count }, (_, i) => (most * (i + 1)) / count);
  const good = ratings('good', even(80, 4));
  const bad = ratings('bad', even(80, 100));

  test('of a class with many figures is its own', () => {
    const scale = errorScaleOf([...good, ...bad]);
    expect(scale('good').rating).toBeLessThan(2.3);
    expect(scale('bad').rating).toBeGreaterThan(9);
  });

  test('is never less than what tests of one part differ by', () => {
    const scale = errorScaleOf([...ratings('good', even(80, 0)), ...ratings('other', even(80, 0))]);
    expect(scale('good').rating).toBeCloseTo(0.4, 9);
  });

  test('of a class with few figures leans on the others', () => {
    const few = ratings('few', [1, 1, 1]);
    const scale = errorScaleOf([...good, ...bad, ...few]);
    expect(scale('few').rating).toBeGreaterThan(scale('good').rating);
    expect(scale('few').rating).toBeLessThan(scale('bad').rating);
  });

  test('of a class without any figure goes by the classes, not by how often each was measured', () => {
    const often = errorScaleOf([...ratings('good', even(300, 4)), ...bad])('none').rating;
    expect(often).toBeCloseTo(errorScaleOf([...good, ...bad])('none').rating, 0);
  });
});
