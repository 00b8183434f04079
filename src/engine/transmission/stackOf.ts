import type { Leaf, Structure } from '../assembly/index.ts';
import { cavityLayers, facingLayers } from './cavityLayers.ts';
import { connectionOf, linksOf } from './connection.ts';
import { couplingOf } from './couplingOf.ts';
import { leafModel } from './leafModel.ts';
import type { GapModel, Stack } from './stack.ts';

const gapBetween = (
  first: Leaf,
  cavity: Structure['cavities'][number],
  second: Leaf,
  size: readonly [number, number],
): GapModel => ({
  layers: cavityLayers(cavity, connectionOf(first, cavity, second) === 'glazed' ? size : null),
  coupling: couplingOf(first, cavity, second),
  links: linksOf(first, cavity, second),
});

/**
 * How much of the absorber loss a leaf gets from a cavity: the share of the depth that is filled, as it is not known
 * which of the two leaves a thinner absorber lies against.
 */
const touchedBy = (cavity: Structure['cavities'][number] | undefined): number => {
  if (!cavity) return 0;
  const porous = cavity.fills.filter((fill) => fill.material.kind === 'porous');
  return Math.min(1, porous.reduce((sum, fill) => sum + fill.thickness, 0) / cavity.depth);
};

/**
 * What the transfer matrices need of an assembly of a given size.
 * @param structure leaves and cavities
 * @param size sides, m
 * @returns stack
 * @validity at least one leaf
 * @source see leafModel, cavityLayers, linksOf
 */
export const stackOf = (structure: Structure, size: readonly [number, number]): Stack => ({
  leaves: structure.leaves.map((leaf, i) =>
    leafModel(leaf, touchedBy(structure.cavities[i - 1]) + touchedBy(structure.cavities[i])),
  ),
  gaps: structure.cavities.flatMap((cavity, i) => {
    const first = structure.leaves[i];
    const second = structure.leaves[i + 1];
    return first && second ? [gapBetween(first, cavity, second, size)] : [];
  }),
  leading: facingLayers(structure.leading),
  trailing: facingLayers(structure.trailing),
});
