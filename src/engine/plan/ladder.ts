import { toLevel } from '../quantities/index.ts';
import { ratingGain } from '../shell/index.ts';
import type { Rung } from './ladderResult.ts';
import type { Standing, Swap, Transmit } from './swap.ts';
import { addedMass, addedThickness, afterSwaps, swapCost, swapOf } from './swap.ts';

/** Less than nothing would be left of a silent shell: the gain is then held here, dB. */
const MOST_GAIN = 150;

/** 10 lg of the energy before to after, dB; held within ±150 dB where one of them is nothing. */
const energyGain = (before: number, after: number): number => {
  if (before === after) return 0;
  const gain = toLevel(before) - toLevel(after);
  return Math.min(MOST_GAIN, Math.max(-MOST_GAIN, gain));
};

/** gain per unit, where something is paid for it */
const per = (gain: number, paid: number | null): number | null => (paid !== null && paid > 0 ? gain / paid : null);

const rungOf = (standing: Standing, swap: Swap): Rung => {
  const after = afterSwaps(standing, [swap]);
  const gain = energyGain(standing.out, after.out);
  const cost = swapCost(swap);
  const thickness = addedThickness(standing, swap);
  const mass = addedMass(standing, swap);
  return {
    part: swap.part.id,
    candidate: swap.candidate.id,
    name: `${swap.part.name}: ${swap.candidate.name}`,
    RwGain: ratingGain(after.whole.ratings.Rw, standing.whole.ratings.Rw),
    bassGain: after.whole.bassR - standing.whole.bassR,
    energyGain: gain,
    cost,
    illustrative: swap.candidate.price.illustrative,
    addedThickness: thickness,
    addedMass: mass,
    gainPerCost: per(gain, cost),
    gainPerThickness: per(gain, thickness),
    gainPerMass: per(gain, mass),
    nextLimiting: after.limiting,
    nextLimitingShare: after.limitingShare,
  };
};

/**
 * The ladder: every single swap of a part for one of its candidates, ranked by what it takes off the energy that gets
 * out with the chosen source over 50 Hz to 5 kHz: gain = 10 lg(W_before/W_after).
 * @param standing the build as it is
 * @param transmit what one part lets through
 * @returns rungs, best first; gains in dB, cost in the project's currency, m, kg
 * @validity one swap at a time: gains of several swaps do not add
 * @source EN 12354-3:2000, clause 4; the ranking is engineering judgement
 */
export const ladder = (standing: Standing, transmit: Transmit): Rung[] =>
  standing.build.parts
    .flatMap((part) => part.candidates.map((candidate) => rungOf(standing, swapOf(part, candidate, transmit))))
    .sort((a, b) => b.energyGain - a.energyGain);
