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
 * What the transfer matrices need of an assembly of a given size.
 * @param structure leaves and cavities
 * @param size sides, m
 * @returns stack
 * @validity at least one leaf
 * @source see leafModel, cavityLayers, linksOf
 */
export const stackOf = (structure: Structure, size: readonly [number, number]): Stack => ({
  leaves: structure.leaves.map(leafModel),
  gaps: structure.cavities.flatMap((cavity, i) => {
    const first = structure.leaves[i];
    const second = structure.leaves[i + 1];
    return first && second ? [gapBetween(first, cavity, second, size)] : [];
  }),
  leading: facingLayers(structure.leading),
  trailing: facingLayers(structure.trailing),
});
