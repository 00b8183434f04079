import { exactCentre } from '../quantities/index.ts';
import type { AngleGrid } from './angleGrid.ts';
import { countPlates, gapRows, leafRow } from './fieldRows.ts';
import {
  couplingImpedance,
  gapResonance,
  leafResponse,
  linkTransmission,
  resonantTransmission,
  thickWallTransmission,
} from './links.ts';
import { newRow, planeTransmission, startRow, throughGap, throughLeaf, velocityResponse } from './rowAlgebra.ts';
import type { GapRows, Row } from './rowAlgebra.ts';
import type { LeafModel, Stack } from './stack.ts';
import { radiationRow } from './windowTable.ts';
import type { WindowTable } from './windowTable.ts';

export interface FieldOptions {
  /** nominal third octaves, Hz */
  readonly bands: readonly number[];
  /** lines in every band */
  readonly lines: number;
  readonly grid: AngleGrid;
  readonly window: WindowTable;
  /** sides of the part, m: where the free waves of a single leaf run */
  readonly size: readonly [number, number];
}

/** Transmission coefficients by path, per band. Their sum is the part without its cap. */
export interface FieldResult {
  /** forced, through leaves and cavities */
  readonly cavity: Float64Array;
  /** free waves of a single leaf and the thick wall's limit */
  readonly resonant: Float64Array;
  readonly links: Float64Array;
  readonly perimeter: Float64Array;
}

interface Prepared {
  readonly stack: Stack;
  readonly plates: readonly ReturnType<typeof countPlates>[];
  readonly leafRows: readonly Row[];
  readonly slots: readonly number[];
  readonly gaps: readonly GapRows[];
  readonly leading: GapRows;
  readonly trailing: GapRows;
  readonly spare: GapRows;
  readonly p: Row;
  readonly v: Row;
  readonly tau: Float64Array;
  readonly sigma: Float64Array;
}

const newGap = (count: number): GapRows => ({ near: newRow(count), far: newRow(count), across: newRow(count) });

const prepare = (stack: Stack, count: number): Prepared => {
  const keys = stack.leaves.map((leaf) => JSON.stringify(leaf));
  return {
    stack,
    plates: stack.leaves.map((leaf) => countPlates(leaf.plates)),
    leafRows: stack.leaves.map(() => newRow(count)),
    slots: keys.map((key) => keys.indexOf(key)),
    gaps: stack.gaps.map(() => newGap(count)),
    leading: newGap(count),
    trailing: newGap(count),
    spare: newGap(count),
    p: newRow(count),
    v: newRow(count),
    tau: new Float64Array(count),
    sigma: new Float64Array(count),
  };
};

/** Diffuse transmission of leaves `from` to `to`: τd = Σ w·τ∞·σ, not above 1. */
const diffuseTransmission = (
  prepared: Prepared,
  grid: AngleGrid,
  frequency: number,
  from: number,
  to: number,
): number => {
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
  planeTransmission(grid, p, v, prepared.tau);
  let sum = 0;
  for (let i = 0; i < grid.count; i += 1)
    sum += (grid.transmission[i] ?? 0) * (prepared.tau[i] ?? 0) * (prepared.sigma[i] ?? 0);
  return Math.min(1, sum);
};

const fillRows = (prepared: Prepared, grid: AngleGrid, frequency: number): void => {
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

interface LineResult {
  cavity: number;
  resonant: number;
  links: number;
  perimeter: number;
}

const singleLeaf = (
  leaf: LeafModel,
  forced: number,
  frequency: number,
  size: readonly [number, number],
): LineResult => {
  const response = leafResponse(leaf, frequency, 0);
  const resonant = resonantTransmission(response, frequency, size[0], size[1]);
  const limit = thickWallTransmission(leaf, response.lossFactor);
  return {
    cavity: forced,
    resonant: Math.max(resonant, Math.min(1, limit) - forced),
    links: 0,
    perimeter: 0,
  };
};

const line = (prepared: Prepared, options: FieldOptions, frequency: number): LineResult => {
  const { stack } = prepared;
  const { grid } = options;
  fillRows(prepared, grid, frequency);
  radiationRow(options.window, frequency, prepared.sigma);
  const last = stack.leaves.length - 1;
  const cavity = diffuseTransmission(prepared, grid, frequency, 0, last);
  const only = stack.leaves[0];
  if (last === 0 && only) return singleLeaf(only, cavity, frequency, options.size);
  let ratio = 1;
  let linkShare = 0;
  let perimeterShare = 0;
  stack.gaps.forEach((gap, i) => {
    const first = stack.leaves[i];
    const second = stack.leaves[i + 1];
    const rowOne = prepared.leafRows[prepared.slots[i] ?? i];
    const rowTwo = prepared.leafRows[prepared.slots[i + 1] ?? i + 1];
    if (gap.links.length === 0 || !first || !second || !rowOne || !rowTwo) return;
    const one = leafResponse(first, frequency, velocityResponse(grid, rowOne));
    const two = leafResponse(second, frequency, rowOne === rowTwo ? one.velocity : velocityResponse(grid, rowTwo));
    const cut = 1 / (1 + (gapResonance(gap, first, second) / frequency) ** 4);
    const pair = last === 1 ? cavity : diffuseTransmission(prepared, grid, frequency, i, i + 1);
    let links = 0;
    let perimeter = 0;
    for (const link of gap.links) {
      const tau = cut * linkTransmission(link, one, two, frequency);
      if (link.path === 'links') links += tau;
      else perimeter += tau;
    }
    ratio *= 1 + (links + perimeter) / pair;
    linkShare += links / pair;
    perimeterShare += perimeter / pair;
  });
  const added = cavity * (ratio - 1);
  const shares = linkShare + perimeterShare;
  return {
    cavity,
    resonant: 0,
    links: shares > 0 ? (added * linkShare) / shares : 0,
    perimeter: shares > 0 ? (added * perimeterShare) / shares : 0,
  };
};

/**
 * Transmission coefficients of a stack in a diffuse field through a window of finite size, by path, as the mean of τ
 * over the lines of every third octave. More than two leaves: each linked cavity multiplies the whole by
 * 1 + τS/τd of its own pair of leaves.
 * @param stack leaves, gaps and links
 * @param options bands, resolution, window
 * @returns τ per band and path
 * @validity see the layers; three and more leaves with links are an estimate
 * @source transfer matrices: Allard and Atalla (2009), ch. 11; window: Villot, Guigou and Gagliardini (2001)
 * @example transmissionCoefficients(stack, options).cavity
 */
export const transmissionCoefficients = (stack: Stack, options: FieldOptions): FieldResult => {
  const prepared = prepare(stack, options.grid.count);
  const count = options.bands.length;
  const result = {
    cavity: new Float64Array(count),
    resonant: new Float64Array(count),
    links: new Float64Array(count),
    perimeter: new Float64Array(count),
  };
  options.bands.forEach((band, b) => {
    const centre = exactCentre(band);
    for (let i = 0; i < options.lines; i += 1) {
      const frequency = centre * 10 ** (((i + 0.5) / options.lines - 0.5) / 10);
      const at = line(prepared, options, frequency);
      result.cavity[b] = (result.cavity[b] ?? 0) + at.cavity / options.lines;
      result.resonant[b] = (result.resonant[b] ?? 0) + at.resonant / options.lines;
      result.links[b] = (result.links[b] ?? 0) + at.links / options.lines;
      result.perimeter[b] = (result.perimeter[b] ?? 0) + at.perimeter / options.lines;
    }
  });
  return result;
};

/** τ∞ of a stack at one frequency and angle. @source as transmissionCoefficients */
export const planeWaveTransmission = (stack: Stack, frequency: number, angle: number): number => {
  const sine = Math.sin(angle);
  const one = (value: number): Float64Array => Float64Array.of(value);
  const grid: AngleGrid = {
    count: 1,
    sine: one(sine),
    sine2: one(sine * sine),
    cosine: one(Math.cos(angle)),
    transmission: one(1),
    velocity: one(1),
  };
  const prepared = prepare(stack, 1);
  prepared.sigma.fill(1);
  fillRows(prepared, grid, frequency);
  diffuseTransmission(prepared, grid, frequency, 0, stack.leaves.length - 1);
  return prepared.tau[0] ?? 0;
};
