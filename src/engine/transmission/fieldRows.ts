import { SOUND_SPEED } from '../quantities/index.ts';
import type { AngleGrid } from './angleGrid.ts';
import { layerFluid } from './fluidLayer.ts';
import { addPlateRow, fluidRows } from './impedanceRows.ts';
import { edgeLossOf } from './leafStiffness.ts';
import { joinRows } from './rowAlgebra.ts';
import type { GapRows, Row } from './rowAlgebra.ts';
import { addSandwich } from './sandwichRow.ts';
import type { FluidLayer, LeafModel, Plate } from './stack.ts';

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

/** Room for the layers of a gap while they are joined: the present one, and the first where it comes again. */
export interface SpareRows {
  readonly present: GapRows;
  readonly first: GapRows;
}

const copyRows = (from: GapRows, to: GapRows): void => {
  for (const key of ['near', 'far', 'across'] as const) {
    to[key].re.set(from[key].re);
    to[key].im.set(from[key].im);
  }
};

/**
 * Impedance matrix of the layers of a gap at every angle.
 * @param layers from the source outwards; the same object again stands for the same layer, worked out once
 * @param rows result
 */
export const gapRows = (
  layers: readonly FluidLayer[],
  frequency: number,
  grid: AngleGrid,
  rows: GapRows,
  spare: SpareRows,
): void => {
  const omega = 2 * Math.PI * frequency;
  const again = layers.some((layer, i) => i > 0 && layer === layers[0]);
  layers.forEach((layer, i) => {
    if (i > 0 && layer === layers[0]) {
      joinRows(grid.count, rows, spare.first);
      return;
    }
    const target = i === 0 ? rows : spare.present;
    const { near, across, far } = target;
    const fluid = layerFluid(layer, frequency);
    fluidRows(fluid, layer.depth, omega, omega / SOUND_SPEED, grid, near.re, near.im, across.re, across.im);
    far.re.set(near.re);
    far.im.set(near.im);
    if (i === 0 && again) copyRows(rows, spare.first);
    if (i > 0) joinRows(grid.count, rows, spare.present);
  });
};
