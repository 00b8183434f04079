import { describe, expect, test } from 'vitest';
import { exactCentre } from '../../../src/engine/quantities/index.ts';
import { limpFluid, mikiFluid } from '../../../src/engine/materials/index.ts';
import type { Stack } from '../../../src/engine/transmission/index.ts';
import {
  planeWaveTransmission,
  transmissionCoefficients,
  windowRadiation,
} from '../../../src/engine/transmission/index.ts';
import { angleGrid } from '../../../src/engine/transmission/angleGrid.ts';
import { besselTable } from '../../../src/engine/transmission/besselTable.ts';
import { countPlates, leafRow } from '../../../src/engine/transmission/fieldRows.ts';
import {
  freeWaveTransmission,
  leafResponse,
  linkTransmission,
  withFreeWaves,
} from '../../../src/engine/transmission/links.ts';
import { newRow, velocityResponse } from '../../../src/engine/transmission/rowAlgebra.ts';
import { SPLIT } from '../../../src/engine/transmission/windowSums.ts';
import { windowTable } from '../../../src/engine/transmission/windowTable.ts';
import golden from './golden.json' with { type: 'json' };
import { goldenLink, goldenStack } from './goldenStack.ts';
import type { GoldenLink, GoldenPart } from './goldenStack.ts';

const grid = angleGrid(400);
const bessel = besselTable(SPLIT * 8.2);
const partsOf = (id: string): readonly GoldenPart[] | undefined => {
  const found = golden.cases.find((it) => it.id === id);
  return found && (found.stack as readonly GoldenPart[]);
};
const sides = (size: readonly number[]): readonly [number, number] => [size[0] ?? NaN, size[1] ?? NaN];

const LINES = 24;

/**
 * Resonant path as the independent implementation has it: the free waves of a single leaf whole up to 0.8·fc, then none
 * but the thick wall's limit; none in two and more leaves.
 */
const goldenResonance = (stack: Stack, size: readonly [number, number], band: number, ours: number): number => {
  const [leaf] = stack.leaves;
  if (!leaf || stack.leaves.length > 1) return 0;
  const fc = leaf.criticalFrequency ?? 0;
  if (band > 1.3 * fc) return ours;
  const lines = Array.from(
    { length: LINES },
    (_, i) => exactCentre(band) * 10 ** (((i + 0.5) / LINES - 0.5) / 10),
  ).filter((frequency) => frequency < 0.8 * fc);
  return lines.reduce((sum, f) => sum + freeWaveTransmission(leafResponse(leaf, f, 0), f, size, false) / LINES, 0);
};

describe('an independent implementation of the first method', () => {
  test.each(golden.cases.map((it) => [it.title, it] as const))('agrees on %s within 0.06 dB a band', (_, it) => {
    const size = sides(it.size);
    const stack = goldenStack(it.stack as readonly GoldenPart[]);
    const window = windowTable(size[0], size[1], grid, bessel);
    const result = transmissionCoefficients(stack, { bands: golden.bands, lines: LINES, grid, window, size });
    const errors = it.R.map((R, b) => {
      const forced = (['cavity', 'links', 'perimeter'] as const).reduce(
        (sum, path) => sum + (result[path][b] ?? NaN),
        0,
      );
      const tau = forced + goldenResonance(stack, size, golden.bands[b] ?? NaN, result.resonant[b] ?? NaN);
      return Math.abs(-10 * Math.log10(tau) - R);
    });
    expect(Math.max(...errors)).toBeLessThan(0.06);
    const alone = it.R_cavity_only?.map((R, b) => Math.abs(-10 * Math.log10(result.cavity[b] ?? NaN) - R)) ?? [];
    expect(Math.max(0, ...alone)).toBeLessThan(0.06);
    stack.leaves.forEach((leaf, i) => {
      const fc = it.f_c[i] ?? null;
      if (fc === null) expect(leaf.criticalFrequency).toBeNull();
      else expect(Math.abs((leaf.criticalFrequency ?? NaN) - fc)).toBeLessThan(Math.max(0.06, 1e-4 * fc));
    });
  });

  const spots = golden.spot_tau.filter((spot) => partsOf(spot.id));
  test('agrees on plane-wave transmission at single frequencies and angles to one in a million', () => {
    expect(spots.length).toBeGreaterThanOrEqual(9);
    for (const spot of spots) {
      const tau = planeWaveTransmission(goldenStack(partsOf(spot.id) ?? []), spot.f, (spot.theta_deg * Math.PI) / 180);
      expect(Math.abs(tau / spot.tau - 1)).toBeLessThan(1e-6);
    }
  });

  test('agrees on absorbers as fluids', () => {
    for (const it of golden.porous) {
      const fluid = it.rho_b === null ? mikiFluid(it.f, it.sigma) : limpFluid(it.f, it.sigma, it.rho_b);
      const values = [fluid.density.re, fluid.density.im, fluid.wavenumber.re, fluid.wavenumber.im];
      [...it.rho, ...it.k].forEach((expected, i) => {
        expect(Math.abs((values[i] ?? NaN) / expected - 1)).toBeLessThan(1e-9);
      });
    }
  });

  test('agrees on the radiation factor of a window within 0.01 dB', () => {
    for (const it of golden.sigma_window) {
      const sigma = windowRadiation(it.f, (it.theta_deg * Math.PI) / 180, ...sides(it.size));
      expect(Math.abs(10 * Math.log10(sigma / it.sigma))).toBeLessThan(0.01);
    }
  });

  test('agrees on the power through links within 0.02 dB', () => {
    const leaf = goldenStack(partsOf('single-01') ?? []).leaves[0];
    expect(leaf).toBeDefined();
    if (!leaf) return;
    for (const it of golden.link_tau)
      it.f.forEach((f, i) => {
        const row = newRow(grid.count);
        leafRow(leaf, countPlates(leaf.plates), f, grid, row);
        const link = goldenLink(it.link as unknown as GoldenLink);
        const response = withFreeWaves(link, leafResponse(leaf, f, velocityResponse(grid, row)), f);
        const tau = linkTransmission(link, response, response, f);
        expect(Math.abs(-10 * Math.log10(tau) - (it.minus10lg_tau[i] ?? NaN))).toBeLessThan(0.02);
      });
  });
});
