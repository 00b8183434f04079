import { complex, over, plus, scaled, times } from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';
import { shearModulusAt } from '../materials/index.ts';
import type { Sandwich } from './stack.ts';

/**
 * Bending stiffness of plates joined by viscoelastic sheets at a given wavenumber. Two skins:
 * B(k) = Bt·(1 + Y·g/(g + k²)), g = (G/h2)·(1/E1h1 + 1/E3h3), Y = d²·E1h1·E3h3/((E1h1 + E3h3)·Bt).
 * More skins: the in-plane displacements that minimise the energy of stretching and shearing (tridiagonal system).
 * @param sandwich skins and sheets
 * @param frequency f, Hz, > 0
 * @param wavenumberSquared k², 1/m², > 0
 * @returns complex B, N·m
 * @validity thin skins that carry no shear, sheets that carry no bending
 * @source Mead and Markus, J. Sound Vib. 10 (1969) 163-175
 * @example sandwichStiffness(pair, 1000, 300) // between the free and the rigidly bonded pair
 */
export const sandwichStiffness = (sandwich: Sandwich, frequency: number, wavenumberSquared: number): Complex => {
  const springs = sandwich.sheets.map((sheet) =>
    scaled(shearModulusAt(sheet.material, frequency), 1 / sheet.thickness),
  );
  const arms = sandwich.sheets.map((sheet) => sheet.arm);
  const skins = sandwich.stretching;
  // limp skins slip along: the sheets then add no stiffness
  if (skins.filter((skin) => skin > 0).length < 2) return complex(sandwich.bending, sandwich.bendingLoss);
  // (k²·K + S)·u = rhs for unit slope; S couples neighbours, rhs_i = s_(i)·d_(i) − s_(i−1)·d_(i−1)
  const pivots: Complex[] = [];
  const sides: Complex[] = [];
  skins.forEach((skin, i) => {
    const left = springs[i - 1] ?? complex(0);
    const right = springs[i] ?? complex(0);
    let pivot = plus(plus(left, right), complex(skin * wavenumberSquared));
    let side = plus(scaled(right, arms[i] ?? 0), scaled(left, -(arms[i - 1] ?? 0)));
    const above = pivots[i - 1];
    const aboveSide = sides[i - 1];
    if (above && aboveSide) {
      pivot = plus(pivot, scaled(over(times(left, left), above), -1));
      side = plus(side, over(times(left, aboveSide), above));
    }
    pivots.push(pivot);
    sides.push(side);
  });
  const moved: Complex[] = [];
  for (let i = skins.length - 1; i >= 0; i -= 1) {
    const right = springs[i];
    const next = moved[i + 1];
    const side = sides[i] ?? complex(0);
    moved[i] = over(right && next ? plus(side, times(right, next)) : side, pivots[i] ?? complex(1));
  }
  let added = complex(0);
  springs.forEach((spring, i) => {
    const slip = plus(moved[i + 1] ?? complex(0), scaled(moved[i] ?? complex(0), -1));
    added = plus(added, times(scaled(spring, arms[i] ?? 0), plus(complex(arms[i] ?? 0), slip)));
  });
  // energy per slope²: ½·k²·added with slip driven by the slope
  return complex(sandwich.bending + added.re / wavenumberSquared, sandwich.bendingLoss + added.im / wavenumberSquared);
};
