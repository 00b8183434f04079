import { SOUND_SPEED, complex, over } from '../quantities/index.ts';
import { shearModulusAt } from '../materials/index.ts';
import type { AngleGrid } from './angleGrid.ts';
import { addSandwichRow } from './impedanceRows.ts';
import type { Row } from './rowAlgebra.ts';
import { sandwichStiffness } from './sandwichStiffness.ts';
import type { Sandwich } from './stack.ts';

/**
 * Three skins on two sheets, all stretchable: B = Bt + (a2·d1² + 2c·d1·d2 + a1·d2²)/(a1·a2 − c²) with
 * aj = k²/sj + 1/Kj + 1/Kj+1, sj = Gj/hj, c = 1/K2: the shear flows of the sheets as unknowns.
 */
const addThreeSkins = (sandwich: Sandwich, frequency: number, edge: number, grid: AngleGrid, row: Row): void => {
  const omega = 2 * Math.PI * frequency;
  const k2 = (omega / SOUND_SPEED) ** 2;
  const [K1 = 1, K2 = 1, K3 = 1] = sandwich.stretching;
  const [one, two] = sandwich.sheets;
  if (!one || !two) return;
  const soft1 = over(complex(one.thickness), shearModulusAt(one.material, frequency));
  const soft2 = over(complex(two.thickness), shearModulusAt(two.material, frequency));
  const c = 1 / K2;
  const d1 = one.arm;
  const d2 = two.arm;
  const lossy = sandwich.bendingLoss + edge * sandwich.bending;
  for (let i = 0; i < grid.count; i += 1) {
    const x = k2 * (grid.sine2[i] ?? 0);
    const a1r = x * soft1.re + 1 / K1 + c;
    const a1i = x * soft1.im;
    const a2r = x * soft2.re + c + 1 / K3;
    const a2i = x * soft2.im;
    const tr = a2r * d1 * d1 + 2 * c * d1 * d2 + a1r * d2 * d2;
    const ti = a2i * d1 * d1 + a1i * d2 * d2;
    const nr = a1r * a2r - a1i * a2i - c * c;
    const ni = a1r * a2i + a1i * a2r;
    const size = nr * nr + ni * ni;
    const Br = sandwich.bending + (tr * nr + ti * ni) / size;
    const Bi = lossy + (ti * nr - tr * ni) / size;
    const factor = (x * x) / omega;
    row.re[i] = (row.re[i] ?? 0) + Bi * factor;
    row.im[i] = (row.im[i] ?? 0) + omega * sandwich.mass - Br * factor;
  }
};

/** Adds the impedance of plates on damping sheets at every angle. @source see sandwichStiffness */
export const addSandwich = (sandwich: Sandwich, frequency: number, edge: number, grid: AngleGrid, row: Row): void => {
  const omega = 2 * Math.PI * frequency;
  const k0 = omega / SOUND_SPEED;
  const sheet = sandwich.sheets[0];
  const [first, second] = sandwich.stretching;
  const bending = complex(sandwich.bending, sandwich.bendingLoss + edge * sandwich.bending);
  if (sheet && first !== undefined && second !== undefined && sandwich.sheets.length === 1) {
    // a limp skin slips along: the sheet then adds no stiffness
    const stretching = first * second > 0 ? (first * second) / (first + second) : 0;
    const G = shearModulusAt(sheet.material, frequency);
    const scale = stretching > 0 ? 1 / (sheet.thickness * stretching) : 0;
    const shear = complex(G.re * scale, G.im * scale);
    addSandwichRow(sandwich.mass, bending, sheet.arm ** 2 * stretching, shear, omega, k0, grid, row.re, row.im);
    return;
  }
  if (sandwich.sheets.length === 2 && sandwich.stretching.every((it) => it > 0)) {
    addThreeSkins(sandwich, frequency, edge, grid, row);
    return;
  }
  for (let i = 0; i < grid.count; i += 1) {
    const kx2 = k0 * k0 * (grid.sine2[i] ?? 0);
    const B = sandwichStiffness(sandwich, frequency, kx2);
    row.re[i] = (row.re[i] ?? 0) + ((B.im + edge * B.re) * kx2 * kx2) / omega;
    row.im[i] = (row.im[i] ?? 0) + omega * sandwich.mass - (B.re * kx2 * kx2) / omega;
  }
};
