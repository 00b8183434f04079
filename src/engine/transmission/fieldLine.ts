import type { AngleGrid } from './angleGrid.ts';
import { diffuseTransmission, fillRows } from './fieldWorkspace.ts';
import type { FieldWorkspace } from './fieldWorkspace.ts';
import { gapResonance, leafResponse, linkTransmission, resonantTransmission, thickWallTransmission } from './links.ts';
import { velocityResponse } from './rowAlgebra.ts';
import type { LeafModel } from './stack.ts';
import { radiationRow } from './windowTable.ts';
import type { WindowTable } from './windowTable.ts';

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
  const resonant = resonantTransmission(response, frequency, size[0], size[1]);
  const limit = thickWallTransmission(leaf, response.lossFactor);
  return {
    cavity: forced,
    resonant: Math.max(resonant, Math.min(1, limit) - forced),
    links: 0,
    perimeter: 0,
  };
};

/**
 * Transmission at one frequency.
 * @param prepared workspace of the stack
 * @param options angles, window, size
 * @param frequency f, Hz, > 0
 * @returns τ by path
 * @source see transmissionCoefficients
 */
export const fieldLine = (
  prepared: FieldWorkspace,
  options: { readonly grid: AngleGrid; readonly window: WindowTable; readonly size: readonly [number, number] },
  frequency: number,
): LineResult => {
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
