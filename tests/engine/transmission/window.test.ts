import { describe, expect, test } from 'vitest';
import { SOUND_SPEED } from '../../../src/engine/quantities/index.ts';
import { angleGrid } from '../../../src/engine/transmission/angleGrid.ts';
import { besselJ0, besselTable } from '../../../src/engine/transmission/besselTable.ts';
import { gaussLegendre } from '../../../src/engine/transmission/gaussLegendre.ts';
import { windowRadiation } from '../../../src/engine/transmission/windowRadiation.ts';
import { SPLIT } from '../../../src/engine/transmission/windowSums.ts';
import { radiationRow, windowTable } from '../../../src/engine/transmission/windowTable.ts';

test('J0 has its known values and first root', () => {
  // Abramowitz and Stegun (1964), table 9.1
  expect(besselJ0(0)).toBeCloseTo(1, 7);
  expect(besselJ0(1)).toBeCloseTo(0.7651976866, 6);
  expect(besselJ0(10)).toBeCloseTo(-0.2459357645, 6);
  expect(Math.abs(besselJ0(2.404825557695773))).toBeLessThan(1e-6);
});

test('Gauss-Legendre quadrature is exact for polynomials of degree 2n − 1', () => {
  const { nodes, weights } = gaussLegendre(5, 0, 2);
  const integral = nodes.reduce((sum, x, i) => sum + (weights[i] ?? 0) * x ** 9, 0);
  expect(integral).toBeCloseTo(2 ** 10 / 10, 9);
});

describe('the radiation factor of a window', () => {
  test('of a small one is k0²·ab/2π at any angle', () => {
    const k = (2 * Math.PI * 20) / SOUND_SPEED;
    for (const angle of [0, 0.7, 1.5])
      expect(windowRadiation(20, angle, 0.2, 0.15) / ((k * k * 0.03) / (2 * Math.PI))).toBeCloseTo(1, 2);
  });

  test('of a large one is 1/cosθ away from grazing', () => {
    for (const angle of [0.2, 0.6, 1]) expect(windowRadiation(3000, angle, 4, 2.5) * Math.cos(angle)).toBeCloseTo(1, 2);
  });

  test.each([
    [4, 2.5],
    [1.48, 1.23],
    [0.9, 2.1],
    [0.4, 0.4],
    [6, 1],
  ])('of the quick table is the integral within 0.2 dB: %f × %f m', (width, height) => {
    const grid = angleGrid(24);
    const table = windowTable(width, height, grid, besselTable(SPLIT * 8.2));
    const row = new Float64Array(grid.count);
    for (let f = 25; f < 6000; f *= 1.31) {
      radiationRow(table, f, row);
      grid.sine.forEach((sine, i) => {
        const exact = windowRadiation(f, Math.asin(sine), width, height);
        expect(Math.abs(10 * Math.log10((row[i] ?? NaN) / exact))).toBeLessThan(0.2);
      });
    }
  });
});
