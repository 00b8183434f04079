import { describe, expect, test } from 'vitest';
import { evenedOut } from '../../../src/engine/transmission/evenedOut.ts';

const frequencies = Array.from({ length: 60 }, (_, i) => 1000 * 10 ** (i / 120));
const shapeOf = (velocities: readonly number[]): number[] => velocities.map((v, i) => v * (frequencies[i] ?? 0) ** 2);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

describe('boards of unequal stiffness', () => {
  const limp = frequencies.map((f) => 1 / (f * f));
  const peaked = limp.map((v, i) => v * (1 + 100 / (1 + ((i - 30) / 2) ** 2)));

  test('equal boards answer as one', () => {
    expect(evenedOut(peaked, frequencies, 0)).toEqual(peaked);
  });

  test('boards without stiffness answer by their mass alone', () => {
    evenedOut(limp, frequencies, 0.05).forEach((v, i) => {
      expect(v / (limp[i] ?? NaN)).toBeCloseTo(1, 9);
    });
  });

  test('a peak widens and sinks, and its share of all bands together stays', () => {
    const even = shapeOf(evenedOut(peaked, frequencies, 0.05));
    expect(Math.max(...even)).toBeLessThan(0.8 * Math.max(...shapeOf(peaked)));
    expect(sum(even) / sum(shapeOf(peaked))).toBeCloseTo(1, 2);
    expect(even[20]).toBeGreaterThan(shapeOf(peaked)[20] ?? NaN);
  });

  test('two leaves pass less between them than if their peaks always met', () => {
    const even = shapeOf(evenedOut(peaked, frequencies, 0.05));
    expect(sum(even.map((v) => v * v))).toBeLessThan(0.9 * sum(shapeOf(peaked).map((v) => v * v)));
  });
});
