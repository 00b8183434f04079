import { describe, expect, test } from 'vitest';
import type { ViscoelasticMaterial } from '../../../src/engine/materials/index.ts';
import { SOUND_SPEED, modulus } from '../../../src/engine/quantities/index.ts';
import { angleGrid } from '../../../src/engine/transmission/angleGrid.ts';
import { newRow } from '../../../src/engine/transmission/rowAlgebra.ts';
import { addSandwich } from '../../../src/engine/transmission/sandwichRow.ts';
import { bondedPlate, sandwich } from '../../../src/engine/transmission/plateModel.ts';
import type { PlateLayer } from '../../../src/engine/transmission/plateModel.ts';
import { sandwichStiffness } from '../../../src/engine/transmission/sandwichStiffness.ts';
import type { Assembly } from '../../../src/engine/assembly/index.ts';
import { createPredictor } from '../../../src/engine/transmission/index.ts';
import { GYPSUM, layup, sheet } from '../../support/layups.ts';

const skin: PlateLayer = { thickness: 0.0125, density: 720, youngsModulus: 2.5e9, poissonRatio: 0.3, lossFactor: 0.03 };
const core = (shearModulus: number): ViscoelasticMaterial => ({
  kind: 'viscoelastic',
  name: 'core',
  density: 1100,
  shearModulus,
  lossFactor: 1,
});
const stiffness = (shearModulus: number, count = 2): number =>
  modulus(
    sandwichStiffness(
      sandwich(
        Array.from({ length: count }, () => [skin]),
        Array.from({ length: count - 1 }, () => ({ material: core(shearModulus), thickness: 1e-7, layer: 1 })),
      ),
      1000,
      600,
    ),
  );
const alone = bondedPlate([skin]).bending * Math.hypot(1, skin.lossFactor);

describe('boards on a damping sheet', () => {
  test.each([2, 3])('bend side by side when the sheet is very soft: %i boards', (count) => {
    expect(Math.abs(stiffness(1e-6, count) / (count * alone) - 1)).toBeLessThan(1e-3);
  });

  test.each([2, 3])('bend as one plate when the sheet is very stiff: %i boards', (count) => {
    const bonded = bondedPlate(Array.from({ length: count }, () => skin)).bending;
    expect(Math.abs(stiffness(1e12, count) / bonded - 1)).toBeLessThan(1e-3);
  });

  test('are stiffer the stiffer the sheet', () => {
    const values = [1e2, 1e3, 1e4, 1e5].map((G) => stiffness(G));
    expect(values).toEqual([...values].sort((a, b) => a - b));
  });
});

test('three boards on two unlike sheets: the quick closed form is the energy minimum at every angle', () => {
  const grid = angleGrid(40);
  const sheets = [core(4e5), core(3e7)].map((material) => ({ material, thickness: 0.0005, layer: 1 }));
  const stack = sandwich([[skin], [{ ...skin, thickness: 0.015 }], [skin]], sheets);
  for (const f of [50, 500, 5000]) {
    const row = newRow(grid.count);
    addSandwich(stack, f, 0, grid, row);
    const omega = 2 * Math.PI * f;
    grid.sine2.forEach((u, i) => {
      const k2 = u * (omega / SOUND_SPEED) ** 2;
      const B = sandwichStiffness(stack, f, k2);
      const scale = omega * stack.mass;
      expect(Math.abs((row.re[i] ?? NaN) - (B.im * k2 * k2) / omega) / scale).toBeLessThan(1e-9);
      expect(Math.abs((row.im[i] ?? NaN) - scale + (B.re * k2 * k2) / omega) / scale).toBeLessThan(1e-9);
    });
  }
});

describe('two boards', () => {
  const predictor = createPredictor();
  const pair = (shearModulus: number | 'rigid' | null): Assembly =>
    layup(
      sheet(GYPSUM, 12.5),
      ...(shearModulus === null
        ? []
        : [
            {
              kind: 'interlayer' as const,
              material: shearModulus === 'rigid' ? ('rigid' as const) : core(shearModulus),
              thickness: 0.0005,
            },
          ]),
      sheet(GYPSUM, 12.5),
    );
  const coincidence = (assembly: Assembly): number => predictor.predict(assembly).criticalFrequencies[0] ?? NaN;

  test('bonded have half the critical frequency of the same boards screwed, and lose Rw', () => {
    expect(coincidence(pair('rigid')) / coincidence(pair(null))).toBeCloseTo(0.5, 6);
    const rating = (assembly: Assembly): number => predictor.predict(assembly).ratings.Rw ?? NaN;
    expect(rating(pair(null)) - rating(pair('rigid'))).toBeGreaterThanOrEqual(2);
  });

  test('on a soft compound fill the coincidence dip of the screwed pair', () => {
    // the dip stands astride two bands: what both let through together
    const dip = (assembly: Assembly): number => {
      const { R, bands } = predictor.predict(assembly);
      const tau = [2500, 3150].map((band) => 10 ** (-(R[bands.indexOf(band)] ?? NaN) / 10));
      return -10 * Math.log10(tau.reduce((sum, each) => sum + each, 0));
    };
    expect(dip(pair(4e5)) - dip(pair(null))).toBeGreaterThan(4);
  });
});
