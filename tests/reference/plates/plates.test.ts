import { describe, expect, test } from 'vitest';
import {
  bendingStiffness,
  criticalFrequency,
  longitudinalSpeed,
  mikiFluid,
} from '../../../src/engine/materials/index.ts';
import type { BoardMaterial } from '../../../src/engine/materials/index.ts';
import { AIR_IMPEDANCE, SOUND_SPEED } from '../../../src/engine/quantities/index.ts';
import checks from './checks.json' with { type: 'json' };

type Row = readonly [string, number | readonly number[], number, number, number, unknown];
const entry = (id: string) => checks.find((it) => it.id === id);
const rows = (entry('hopkins-A2')?.expected as unknown as { readonly rows: readonly Row[] }).rows;

const plate = (density: number, speed: number, poissonRatio: number): BoardMaterial => ({
  kind: 'board',
  family: 'other',
  name: 'plate',
  density,
  poissonRatio,
  youngsModulus: density * speed ** 2 * (1 - poissonRatio ** 2),
  lossFactor: 0.01,
});

describe('critical frequency', () => {
  test.each(rows.map((row) => [row[0], row] as const))('times thickness is as printed for %s', (_, row) => {
    const density = typeof row[1] === 'number' ? row[1] : (row[1][0] ?? NaN);
    const board = plate(density, row[2], row[3]);
    const h = 0.01;
    const product = h * (criticalFrequency(density * h, bendingStiffness(board, h)) ?? NaN);
    expect(longitudinalSpeed(board)).toBeCloseTo(row[2], 6);
    // the table is for c0 = 343 m/s
    expect(Math.abs(product * (343 / SOUND_SPEED) ** 2 - row[4])).toBeLessThan(0.06);
  });

  test('of 13 mm plasterboard from its printed modulus is 2380 Hz', () => {
    const board: BoardMaterial = { ...plate(800, 1, 0.3), youngsModulus: 3.2e9 };
    const fc = criticalFrequency(800 * 0.013, bendingStiffness(board, 0.013)) ?? NaN;
    expect(Math.abs(fc - 2380)).toBeLessThan(12);
  });
});

test('Miki absorber at f/σ = 0.1 has the printed impedance and wavenumber', () => {
  const f = 1000;
  const fluid = mikiFluid(f, 10 * f);
  const k0 = (2 * Math.PI * f) / SOUND_SPEED;
  // Zc = ρ·ω/k
  const k = { re: fluid.wavenumber.re / k0, im: fluid.wavenumber.im / k0 };
  expect(k.re).toBeCloseTo(1.4522999065, 9);
  expect(k.im).toBeCloseTo(-0.6639264682, 9);
  const size = fluid.wavenumber.re ** 2 + fluid.wavenumber.im ** 2;
  const { re, im } = fluid.density;
  const omega = 2 * Math.PI * f;
  expect(((re * fluid.wavenumber.re + im * fluid.wavenumber.im) * omega) / size / AIR_IMPEDANCE).toBeCloseTo(
    1.2999839643,
    9,
  );
  expect(((im * fluid.wavenumber.re - re * fluid.wavenumber.im) * omega) / size / AIR_IMPEDANCE).toBeCloseTo(
    -0.4585469168,
    9,
  );
});
