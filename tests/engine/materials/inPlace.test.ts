import { describe, expect, test } from 'vitest';
import {
  addedLoss,
  bendingStiffness,
  criticalFrequency,
  isMasonry,
  limpFluid,
  mikiFluid,
  shearModulusAt,
  stiffnessInPlace,
} from '../../../src/engine/materials/index.ts';
import { AIR_DENSITY } from '../../../src/engine/quantities/index.ts';
import { BLOCK, GLASS, GYPSUM, TOPPING } from '../../support/layups.ts';

describe('boards in place', () => {
  test('light regular gypsum boards ring more than fire-rated ones, but never less than nothing is added', () => {
    const loss = (density: number): number => addedLoss({ ...GYPSUM, density }, 0.0125, false);
    expect(loss(630)).toBeLessThan(loss(690));
    expect(loss(980)).toBe(loss(690));
    expect(loss(300)).toBeGreaterThan(0);
  });

  test('the stiffness factor of gypsum boards falls with thickness and stays within the printed range of h·fc', () => {
    const product = (h: number): number => {
      const board = { ...GYPSUM, youngsModulus: GYPSUM.youngsModulus * stiffnessInPlace(GYPSUM, h) };
      return h * (criticalFrequency(board.density * h, bendingStiffness(board, h)) ?? NaN);
    };
    const products = [0.0125, 0.015, 0.0159].map(product);
    expect(products).toEqual([...products].sort((a, b) => a - b));
    // Hopkins, Sound Insulation (2007), table A2, and Vigran (2008), table 8.2: 30.9 to 43.5
    for (const it of products) {
      expect(it).toBeGreaterThan(30.9);
      expect(it).toBeLessThan(43.5);
    }
    expect(stiffnessInPlace(GLASS, 0.006)).toBe(1);
  });

  test('masonry begins at 50 mm of mineral', () => {
    expect(isMasonry(BLOCK, 0.1)).toBe(true);
    expect(isMasonry(TOPPING, 0.025)).toBe(false);
    expect(isMasonry(GLASS, 0.06)).toBe(false);
  });
});

describe('absorbers and damping sheets', () => {
  test('a heavy frame stands still: the limp absorber tends to the rigid one', () => {
    const limp = limpFluid(500, 8000, 1e7);
    const rigid = mikiFluid(500, 8000);
    expect(limp.density.re / rigid.density.re).toBeCloseTo(1, 4);
    expect(limp.wavenumber.im / rigid.wavenumber.im).toBeCloseTo(1, 4);
  });

  test('a dense absorber that is dragged along weighs as much as frame and air', () => {
    expect(limpFluid(5, 1e6, 20).density.re).toBeCloseTo(20 + 0.98 * AIR_DENSITY, 0);
  });

  test('a damping sheet has its modulus at 1 kHz and stiffens with frequency', () => {
    const sheet = { kind: 'viscoelastic', name: 'sheet', density: 1100, shearModulus: 4e5, lossFactor: 0.9 } as const;
    expect(shearModulusAt(sheet, 1000)).toEqual({ re: 4e5, im: 3.6e5 });
    expect(shearModulusAt(sheet, 2000).re).toBeGreaterThan(4e5);
  });
});
