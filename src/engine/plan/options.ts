import type { Option } from '../shell/index.ts';
import { ratingGain } from '../shell/index.ts';
import type { OptionResult } from './ladderResult.ts';
import type { Standing, Swap, Transmit } from './swap.ts';
import { addedMass, afterSwaps, swapCost, swapOf } from './swap.ts';

/** A swap whose part or candidate is no longer there changes nothing. */
const swapsOf = (standing: Standing, option: Option, transmit: Transmit): Swap[] =>
  Object.entries(option.swaps).flatMap(([partId, candidateId]) => {
    const part = standing.build.parts.find(({ id }) => id === partId);
    const candidate = part?.candidates.find(({ id }) => id === candidateId);
    return part && candidate ? [swapOf(part, candidate, transmit)] : [];
  });

/**
 * A named set of swaps made together.
 * @param standing the build as it is
 * @param option part id to candidate id; a swap whose part or candidate is gone changes nothing
 * @param transmit what one part lets through
 * @returns the whole with its gains over the build as it is; cost null where any swap lacks a price
 * @source EN 12354-3:2000, clause 4
 */
export const optionResult = (standing: Standing, option: Option, transmit: Transmit): OptionResult => {
  const swaps = swapsOf(standing, option, transmit);
  const { whole, limiting } = afterSwaps(standing, swaps);
  return {
    id: option.id,
    name: option.name,
    R: whole.R,
    ratings: whole.ratings,
    bassR: whole.bassR,
    RwGain: ratingGain(whole.ratings.Rw, standing.whole.ratings.Rw),
    bassGain: whole.bassR - standing.whole.bassR,
    cost: swaps.map(swapCost).reduce((sum, cost) => (sum === null || cost === null ? null : sum + cost), 0),
    illustrative: swaps.some(({ candidate }) => candidate.price.illustrative),
    addedMass: swaps.reduce((sum, swap) => sum + (addedMass(standing, swap) ?? 0), 0),
    limiting,
  };
};
