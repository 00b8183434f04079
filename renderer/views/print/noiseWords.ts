import type { RatedNoise } from '../../../src/engine/breatheResult.ts';

/** Octaves that noise is told in, Hz. */
export const NOISE_COLUMNS: readonly string[] = ['63', '125', '250', '500', '1k', '2k', '4k', '8k'];

/** Half way between the ends of the NC curves. */
const MIDDLE = 40;

/** A noise by its two ratings: "NR 28, NC 26". */
export const noiseWords = ({ noiseRating, noiseCriterion }: RatedNoise): string => {
  const NR = noiseRating < 10 ? 'below NR 10' : `NR ${noiseRating.toFixed(0)}`;
  if (noiseCriterion === null) return `${NR}, ${noiseRating < MIDDLE ? 'below NC 15' : 'above NC 65'}`;
  return `${NR}, NC ${noiseCriterion.toFixed(0)}`;
};
