import { exactCentre } from '../quantities/index.ts';
import type { AngleGrid } from './angleGrid.ts';
import { evenedOut } from './evenedOut.ts';
import { fieldWorkspace, fillRows, planeRow } from './fieldWorkspace.ts';
import type { FieldWorkspace } from './fieldWorkspace.ts';
import { leafResponse, withFreeWaves } from './links.ts';
import type { LeafResponse } from './links.ts';
import { velocityResponse } from './rowAlgebra.ts';
import type { Stack } from './stack.ts';

/** Two leaves that something joins: τ∞ of the pair by itself, and how its leaves answer sound and force at every link. */
export interface AngularPair {
  readonly tau: Float64Array;
  /** per link of the gap */
  readonly ends: readonly (readonly [LeafResponse, LeafResponse])[];
}

/** What a stack does at one frequency whatever its size: τ∞ at every angle, of the whole and of each joined pair. */
export interface AngularLine {
  readonly frequency: number;
  readonly tau: Float64Array;
  /** per gap; null where nothing joins its leaves and nobody asks */
  readonly pairs: readonly (AngularPair | null)[];
  /** per leaf: τ∞ of masonry by itself that another leaf stands beside; null for all else */
  readonly masonry: readonly (Float64Array | null)[];
}

/** The lines of every band, and the grid they were worked out on. */
export interface AngularField {
  readonly grid: AngleGrid;
  readonly bands: readonly (readonly AngularLine[])[];
}

const isMasonry = (stack: Stack, i: number): boolean => stack.leaves[i]?.edgeLoss?.kind === 'masonry';

const angularLine = (prepared: FieldWorkspace, grid: AngleGrid, frequency: number): AngularLine => {
  const { stack } = prepared;
  fillRows(prepared, grid, frequency);
  const last = stack.leaves.length - 1;
  const tau = new Float64Array(grid.count);
  planeRow(prepared, grid, frequency, 0, last, tau);
  const between = last === 2 && isMasonry(stack, 1) && stack.gaps.some((gap) => gap.links.length > 0);
  const pairs = stack.gaps.map((gap, i) => {
    const first = stack.leaves[i];
    const second = stack.leaves[i + 1];
    const rowOne = prepared.leafRows[prepared.slots[i] ?? i];
    const rowTwo = prepared.leafRows[prepared.slots[i + 1] ?? i + 1];
    if ((gap.links.length === 0 && !between) || !first || !second || !rowOne || !rowTwo) return null;
    const one = leafResponse(first, frequency, velocityResponse(grid, rowOne));
    const two = rowOne === rowTwo ? one : leafResponse(second, frequency, velocityResponse(grid, rowTwo));
    const ends = gap.links.map((link) => {
      const near = withFreeWaves(link, one, frequency);
      return [near, one === two ? near : withFreeWaves(link, two, frequency)] as const;
    });
    if (last === 1) return { tau, ends };
    const pair = new Float64Array(grid.count);
    planeRow(prepared, grid, frequency, i, i + 1, pair);
    return { tau: pair, ends };
  });
  const masonry = stack.leaves.map((_, i) => {
    if (last === 0 || !isMasonry(stack, i)) return null;
    const alone = new Float64Array(grid.count);
    planeRow(prepared, grid, frequency, i, i, alone);
    return alone;
  });
  return { frequency, tau, pairs, masonry };
};

/** A leaf at the end of a link, line by line, with its boards unequal (evenedOut). */
const unequal = (
  ends: readonly LeafResponse[],
  frequencies: readonly number[],
  spread: number,
): readonly LeafResponse[] => {
  if (spread === 0) return ends;
  const velocities = evenedOut(
    ends.map((end) => end.velocity),
    frequencies,
    spread,
  );
  return ends.map((end, l) => ({ ...end, velocity: velocities[l] ?? end.velocity }));
};

/** The same lines with the boards of linked leaves unequal, as far as each leaf says; equal leaves are worked out once. */
const withUnequalBoards = (stack: Stack, lines: readonly AngularLine[]): readonly AngularLine[] => {
  if (stack.gaps.every((gap) => gap.links.length === 0)) return lines;
  const frequencies = lines.map((line) => line.frequency);
  const evened = stack.gaps.map((gap, i) =>
    gap.links.map((_, k) => {
      const at = (side: 0 | 1): readonly LeafResponse[] =>
        lines.flatMap((line) => line.pairs[i]?.ends[k]?.[side] ?? []);
      const [first, second] = [at(0), at(1)];
      const one = unequal(first, frequencies, stack.leaves[i]?.criticalSpread ?? 0);
      if (first[0] === second[0]) return [one, one] as const;
      return [one, unequal(second, frequencies, stack.leaves[i + 1]?.criticalSpread ?? 0)] as const;
    }),
  );
  return lines.map((line, l) => ({
    ...line,
    pairs: line.pairs.map(
      (pair, i) =>
        pair && {
          tau: pair.tau,
          ends: pair.ends.map(
            ([one, two], k) => [evened[i]?.[k]?.[0][l] ?? one, evened[i]?.[k]?.[1][l] ?? two] as const,
          ),
        },
    ),
  }));
};

/**
 * The part of a prediction that does not know the size of the part: by far the most of the work, done once for the
 * walls of one make-up and several sizes.
 * @param stack leaves, gaps and links
 * @param bands nominal third octaves, Hz
 * @param lines lines in every band
 * @param grid angles
 * @returns τ∞ at every line and angle
 * @validity bands that follow each other, where the boards of a leaf differ
 * @source transfer matrices: Allard and Atalla (2009), ch. 11
 */
export const angularField = (stack: Stack, bands: readonly number[], lines: number, grid: AngleGrid): AngularField => {
  const prepared = fieldWorkspace(stack, grid.count);
  const all = bands.flatMap((band) =>
    Array.from({ length: lines }, (_, i) =>
      angularLine(prepared, grid, exactCentre(band) * 10 ** (((i + 0.5) / lines - 0.5) / 10)),
    ),
  );
  const even = withUnequalBoards(stack, all);
  return { grid, bands: bands.map((_, b) => even.slice(b * lines, (b + 1) * lines)) };
};
