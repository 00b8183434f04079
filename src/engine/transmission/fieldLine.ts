import type { AngleGrid } from './angleGrid.ts';
import type { AngularLine } from './angularField.ts';
import { gapResonance } from './gapCoupling.ts';
import { leafResponse, linkTransmission, resonantTransmission, thickWallTransmission } from './links.ts';
import type { LeafModel, Stack } from './stack.ts';

/** Transmission coefficients at one frequency, by path. */
export interface LineResult {
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
  const resonant = resonantTransmission(response, frequency, size, leaf.inReveal ?? false);
  const limit = thickWallTransmission(leaf, response.lossFactor);
  return {
    cavity: forced,
    resonant: Math.max(resonant, Math.min(1, limit) - forced),
    links: 0,
    perimeter: 0,
  };
};

/** Diffuse transmission through the window: τd = Σ w·τ∞·σ, not above 1. */
const windowMean = (grid: AngleGrid, tau: Float64Array, sigma: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < grid.count; i += 1) sum += (grid.transmission[i] ?? 0) * (tau[i] ?? 0) * (sigma[i] ?? 0);
  return Math.min(1, sum);
};

/**
 * Transmission at one frequency through a part of a given size.
 * @param stack leaves, gaps and the links of this size
 * @param line what the stack does at every angle
 * @param grid angles
 * @param sigma radiation factor of the window at every angle
 * @param size sides, m
 * @returns τ by path
 * @source see transmissionCoefficients
 */
export const fieldLine = (
  stack: Stack,
  line: AngularLine,
  grid: AngleGrid,
  sigma: Float64Array,
  size: readonly [number, number],
): LineResult => {
  const { frequency } = line;
  const cavity = windowMean(grid, line.tau, sigma);
  const only = stack.leaves[0];
  if (stack.leaves.length === 1 && only) return singleLeaf(only, cavity, frequency, size);
  let ratio = 1;
  let linkShare = 0;
  let perimeterShare = 0;
  stack.gaps.forEach((gap, i) => {
    const first = stack.leaves[i];
    const second = stack.leaves[i + 1];
    const joined = line.pairs[i];
    if (!joined || !first || !second) return;
    const cut = 1 / (1 + (gapResonance(gap, first, second) / frequency) ** 4);
    const pair = joined.tau === line.tau ? cavity : windowMean(grid, joined.tau, sigma);
    let links = 0;
    let perimeter = 0;
    for (const link of gap.links) {
      const tau = cut * linkTransmission(link, joined.one, joined.two, frequency);
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
