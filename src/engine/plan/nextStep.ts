import type { NextStep, Rung } from './ladderResult.ts';

/** Less than this does not count as a step, dB: rounded to whole decibels it is one, and about the least that is heard. */
export const TELLING_GAIN = 0.95;

/** Money a gain costs; free comes first, then the larger gain. */
const cheaper = (a: Rung, b: Rung): number => {
  const rate = ({ energyGain, cost }: Rung): number => (cost === null ? 0 : cost > 0 ? energyGain / cost : Infinity);
  const [first, second] = [rate(a), rate(b)];
  return first === second ? b.energyGain - a.energyGain : second - first;
};

/**
 * The change to make first: of those that take about 1 dB or more off what gets out, the one that takes most off for its
 * money; without prices, or where no change gains as much, the one that takes most off.
 * @param rungs single changes, the largest gain first
 * @returns null where no change helps
 * @source engineering judgement; about 1 dB is the least change that is heard
 */
export const nextStep = (rungs: readonly Rung[]): NextStep | null => {
  const [largest] = rungs;
  if (!largest || largest.energyGain <= 0) return null;
  const telling = rungs.filter((rung) => rung.energyGain >= TELLING_GAIN);
  const [best] = telling.filter((rung) => rung.cost !== null).sort(cheaper);
  const { part, candidate } = best ?? largest;
  return { part, candidate, reason: best ? 'money' : telling.length > 0 ? 'no-prices' : 'all-small' };
};
