import type { AngleGrid } from './angleGrid.ts';
import type { AngularLine } from './angularField.ts';
import { gapResonance } from './gapCoupling.ts';
import { leafResponse, linkTransmission, resonantTransmission, thickWallTransmission } from './links.ts';
import type { LeafModel, Link, Stack } from './stack.ts';

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

/** What joins two neighbouring leaves, beside the air between them. */
interface JoinedPair {
  /** τ of the pair by itself through the air */
  readonly air: number;
  readonly links: number;
  readonly perimeter: number;
}

const joinedPairs = (
  stack: Stack,
  line: AngularLine,
  whole: number,
  mean: (tau: Float64Array) => number,
): JoinedPair[] =>
  stack.gaps.flatMap((gap, i) => {
    const first = stack.leaves[i];
    const second = stack.leaves[i + 1];
    const joined = line.pairs[i];
    if (!joined || !first || !second) return [];
    const cut = 1 / (1 + (gapResonance(gap, first, second) / line.frequency) ** 4);
    const along = (path: Link['path']): number =>
      gap.links.reduce((sum, link, k) => {
        const ends = joined.ends[k];
        return link.path === path && ends ? sum + cut * linkTransmission(link, ...ends, line.frequency) : sum;
      }, 0);
    return [
      { air: joined.tau === line.tau ? whole : mean(joined.tau), links: along('links'), perimeter: along('perimeter') },
    ];
  });

/**
 * What links add to a part that lets τd through the air. Masonry lined on both faces vibrates as a whole, whatever
 * excites it: the changes that its linings make add in decibels, so τ = τd + (τ1·τ2 − τd1·τd2)/τm with τi = τdi + τSi.
 * All else: every linked pair multiplies the whole by 1 + τS/τd of its own.
 * @source both faces: ISO 12354-1:2017, clause 4.2 (ΔR of both sides of an element add; from memory); else engineering
 *   judgement
 */
const addedByLinks = (pairs: readonly JoinedPair[], air: number, masonry: number | null): number => {
  const [first, second] = pairs;
  const linked = (pair: JoinedPair): number => pair.air + pair.links + pair.perimeter;
  if (masonry !== null && first && second)
    return (linked(first) * linked(second) - first.air * second.air) / Math.max(masonry, Number.MIN_VALUE);
  return air * (pairs.reduce((ratio, pair) => ratio * (linked(pair) / pair.air), 1) - 1);
};

/**
 * What free waves of masonry add to what is forced through it, as a factor: 1 + τr/τm. A lining changes both alike.
 * @source ISO 12354-1:2017, annex B (free waves), clause 4.2 (ΔR of a lining beside any transmission; from memory)
 */
const freeWavesOfMasonry = (
  stack: Stack,
  masonry: readonly (number | null)[],
  frequency: number,
  size: readonly [number, number],
): number =>
  stack.leaves.reduce((factor, leaf, i) => {
    const forced = masonry[i];
    if (!forced) return factor;
    return factor * (1 + resonantTransmission(leafResponse(leaf, frequency, 0), frequency, size, false) / forced);
  }, 1);

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
  const mean = (tau: Float64Array): number => windowMean(grid, tau, sigma);
  const pairs = joinedPairs(stack, line, cavity, mean);
  const masonry = line.masonry.map((tau) => tau && mean(tau));
  const added = addedByLinks(pairs, cavity, stack.leaves.length === 3 ? (masonry[1] ?? null) : null);
  const share = (path: 'links' | 'perimeter'): number => pairs.reduce((sum, pair) => sum + pair[path] / pair.air, 0);
  const shares = share('links') + share('perimeter');
  return {
    cavity,
    resonant: cavity * (freeWavesOfMasonry(stack, masonry, frequency, size) - 1),
    links: shares > 0 ? (added * share('links')) / shares : 0,
    perimeter: shares > 0 ? (added * share('perimeter')) / shares : 0,
  };
};
