import type { AngleGrid } from './angleGrid.ts';
import { countPlates, gapRows, leafRow } from './fieldRows.ts';
import { couplingImpedance } from './gapCoupling.ts';
import { newRow, planeTransmission, startRow, throughGap, throughLeaf } from './rowAlgebra.ts';
import type { GapRows, Row } from './rowAlgebra.ts';
import type { SpareRows } from './fieldRows.ts';
import type { Stack } from './stack.ts';

/** Everything that is worked out at one frequency for all angles; the arrays are used again at the next. */
export interface FieldWorkspace {
  readonly stack: Stack;
  readonly plates: readonly ReturnType<typeof countPlates>[];
  readonly leafRows: readonly Row[];
  readonly slots: readonly number[];
  readonly gaps: readonly GapRows[];
  readonly leading: GapRows;
  readonly trailing: GapRows;
  readonly spare: SpareRows;
  readonly p: Row;
  readonly v: Row;
}

const newGap = (count: number): GapRows => ({ near: newRow(count), far: newRow(count), across: newRow(count) });

/** Room for the rows of a stack; equal leaves share theirs. */
export const fieldWorkspace = (stack: Stack, count: number): FieldWorkspace => {
  const keys = stack.leaves.map((leaf) => JSON.stringify(leaf));
  return {
    stack,
    plates: stack.leaves.map((leaf) => countPlates(leaf.plates)),
    leafRows: stack.leaves.map(() => newRow(count)),
    slots: keys.map((key) => keys.indexOf(key)),
    gaps: stack.gaps.map(() => newGap(count)),
    leading: newGap(count),
    trailing: newGap(count),
    spare: { present: newGap(count), first: newGap(count) },
    p: newRow(count),
    v: newRow(count),
  };
};

/** τ∞ of leaves `from` to `to` at every angle. @param out result, one value an angle */
export const planeRow = (
  prepared: FieldWorkspace,
  grid: AngleGrid,
  frequency: number,
  from: number,
  to: number,
  out: Float64Array,
): void => {
  const { stack, p, v } = prepared;
  startRow(grid, p, v);
  if (to === stack.leaves.length - 1 && from === 0 && stack.trailing.length > 0)
    throughGap(grid.count, prepared.trailing, 0, 0, p, v);
  for (let i = to; i >= from; i -= 1) {
    const Z = prepared.leafRows[prepared.slots[i] ?? i];
    if (Z) throughLeaf(grid.count, Z, p, v);
    const gap = stack.gaps[i - 1];
    const rows = prepared.gaps[i - 1];
    const first = stack.leaves[i - 1];
    const second = stack.leaves[i];
    if (i > from && gap && rows && first && second) {
      const z = couplingImpedance(gap, first, second, frequency);
      throughGap(grid.count, rows, z.re, z.im, p, v);
    }
  }
  if (from === 0 && to === stack.leaves.length - 1 && stack.leading.length > 0)
    throughGap(grid.count, prepared.leading, 0, 0, p, v);
  planeTransmission(grid, p, v, out);
};

/** Impedances of all leaves and gaps at one frequency. */
export const fillRows = (prepared: FieldWorkspace, grid: AngleGrid, frequency: number): void => {
  const { stack } = prepared;
  stack.leaves.forEach((leaf, i) => {
    const row = prepared.leafRows[i];
    const plates = prepared.plates[i];
    if (row && plates && prepared.slots[i] === i) leafRow(leaf, plates, frequency, grid, row);
  });
  stack.gaps.forEach((gap, i) => {
    const rows = prepared.gaps[i];
    if (rows) gapRows(gap.layers, frequency, grid, rows, prepared.spare);
  });
  gapRows(stack.leading, frequency, grid, prepared.leading, prepared.spare);
  gapRows(stack.trailing, frequency, grid, prepared.trailing, prepared.spare);
};
