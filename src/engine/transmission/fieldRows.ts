import { SOUND_SPEED, complex } from '../quantities/index.ts';
import { shearModulusAt } from '../materials/index.ts';
import type { AngleGrid } from './angleGrid.ts';
import { layerFluid } from './fluidLayer.ts';
import { addPlateRow, addSandwichRow, fluidRows } from './impedanceRows.ts';
import { edgeLossOf } from './leafStiffness.ts';
import { joinRows } from './rowAlgebra.ts';
import type { GapRows, Row } from './rowAlgebra.ts';
import { sandwichStiffness } from './sandwichStiffness.ts';
import type { FluidLayer, LeafModel, Plate, Sandwich } from './stack.ts';

const samePlate = (a: Plate, b: Plate): boolean =>
  a.mass === b.mass &&
  a.inertia === b.inertia &&
  a.bending === b.bending &&
  a.bendingLoss === b.bendingLoss &&
  a.shear === b.shear &&
  a.shearLoss === b.shearLoss;

/** Equal plates of a leaf counted, so that each is worked out once. */
export const countPlates = (plates: readonly Plate[]): readonly { readonly plate: Plate; readonly count: number }[] => {
  const counted: { plate: Plate; count: number }[] = [];
  for (const plate of plates) {
    const known = counted.find((entry) => samePlate(entry.plate, plate));
    if (known) known.count += 1;
    else counted.push({ plate, count: 1 });
  }
  return counted;
};

const addSandwich = (sandwich: Sandwich, frequency: number, edge: number, grid: AngleGrid, row: Row): void => {
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
  for (let i = 0; i < grid.count; i += 1) {
    const kx2 = k0 * k0 * (grid.sine2[i] ?? 0);
    const B = sandwichStiffness(sandwich, frequency, kx2);
    row.re[i] = (row.re[i] ?? 0) + ((B.im + edge * B.re) * kx2 * kx2) / omega;
    row.im[i] = (row.im[i] ?? 0) + omega * sandwich.mass - (B.re * kx2 * kx2) / omega;
  }
};

/** Impedance of a leaf at every angle; what its mass has beyond plates and sandwiches adds as jωm. */
export const leafRow = (
  leaf: LeafModel,
  plates: ReturnType<typeof countPlates>,
  frequency: number,
  grid: AngleGrid,
  row: Row,
): void => {
  const omega = 2 * Math.PI * frequency;
  const edge = edgeLossOf(leaf, frequency);
  row.re.fill(0);
  const carried =
    plates.reduce((sum, entry) => sum + entry.count * entry.plate.mass, 0) +
    leaf.sandwiches.reduce((sum, sandwich) => sum + sandwich.mass, 0);
  row.im.fill(omega * (leaf.mass - carried));
  for (const { plate, count } of plates)
    addPlateRow(plate, count, omega, omega / SOUND_SPEED, edge, grid, row.re, row.im);
  for (const sandwich of leaf.sandwiches) addSandwich(sandwich, frequency, edge, grid, row);
};

/** Impedance matrix of the layers of a gap at every angle. @param spare room for a second layer */
export const gapRows = (
  layers: readonly FluidLayer[],
  frequency: number,
  grid: AngleGrid,
  rows: GapRows,
  spare: GapRows,
): void => {
  const omega = 2 * Math.PI * frequency;
  layers.forEach((layer, i) => {
    const target = i === 0 ? rows : spare;
    const { near, across, far } = target;
    const fluid = layerFluid(layer, frequency);
    fluidRows(fluid, layer.depth, omega, omega / SOUND_SPEED, grid, near.re, near.im, across.re, across.im);
    far.re.set(near.re);
    far.im.set(near.im);
    if (i > 0) joinRows(grid.count, rows, spare);
  });
};
