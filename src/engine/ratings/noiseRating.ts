/** Octaves of the noise curves, 63 Hz to 8 kHz. */
export const NOISE_OCTAVES: readonly number[] = [63, 125, 250, 500, 1000, 2000, 4000, 8000];

/** L = a + b·NR. @source ISO/R 1996:1971, noise rating curves (published constants) */
const A: readonly number[] = [35.5, 22, 12, 4.8, 0, -3.5, -6.1, -8];
const B: readonly number[] = [0.79, 0.87, 0.93, 0.974, 1, 1.015, 1.025, 1.03];

/** Noise criterion curves, dB per octave 63 Hz to 8 kHz. @source ANSI S12.2, NC curves (from memory) */
const NC: readonly (readonly [number, readonly number[]])[] = [
  [15, [47, 36, 29, 22, 17, 14, 12, 11]],
  [20, [51, 40, 33, 26, 22, 19, 17, 16]],
  [25, [54, 44, 37, 31, 27, 24, 22, 21]],
  [30, [57, 48, 41, 35, 31, 29, 28, 27]],
  [35, [60, 52, 45, 40, 36, 34, 33, 32]],
  [40, [64, 56, 50, 45, 41, 39, 38, 37]],
  [45, [67, 60, 54, 49, 46, 44, 43, 42]],
  [50, [71, 64, 58, 54, 51, 49, 48, 47]],
  [55, [74, 67, 62, 58, 56, 54, 53, 52]],
  [60, [77, 71, 67, 63, 61, 59, 58, 57]],
  [65, [80, 75, 71, 68, 66, 64, 63, 62]],
];

const requireOctaves = (levels: readonly number[]): void => {
  if (levels.length !== NOISE_OCTAVES.length)
    throw new RangeError(`noise must have ${NOISE_OCTAVES.length} octaves, got ${levels.length}`);
};

/** Level of a noise rating curve, dB per octave 63 Hz to 8 kHz. @example noiseRatingCurve(20)[0] // 51.3 */
export const noiseRatingCurve = (rating: number): number[] => A.map((a, i) => a + (B[i] ?? 1) * rating);

/**
 * Noise rating NR of a steady noise: the highest curve that its octaves touch.
 * @param levels dB per octave 63 Hz to 8 kHz
 * @returns NR, not rounded; below 0 for less than the lowest curve
 * @throws RangeError for another number of octaves
 * @source ISO/R 1996:1971
 * @example noiseRating([47, 35, 26, 19, 15, 12, 9, 7]) // 15.3
 */
export const noiseRating = (levels: readonly number[]): number => {
  requireOctaves(levels);
  return Math.max(...levels.map((level, i) => (level - (A[i] ?? 0)) / (B[i] ?? 1)));
};

/**
 * Noise criterion NC of a steady noise: the highest curve that its octaves touch, straight between curves.
 * @param levels dB per octave 63 Hz to 8 kHz
 * @returns NC, not rounded; null below NC 15 or above NC 65, where there are no curves
 * @throws RangeError for another number of octaves
 * @source ANSI S12.2 (curves from memory)
 * @example noiseCriterion([51, 40, 33, 26, 22, 19, 17, 16]) // 20
 */
export const noiseCriterion = (levels: readonly number[]): number | null => {
  requireOctaves(levels);
  const touched = levels.map((level, i) => {
    const above = NC.findIndex(([, curve]) => (curve[i] ?? 0) >= level);
    const [to, from] = [NC[above], NC[above - 1]];
    if (!to) return Infinity;
    if (!from) return (to[1][i] ?? 0) === level ? to[0] : -Infinity;
    const [low, high] = [from[1][i] ?? 0, to[1][i] ?? 0];
    return from[0] + ((to[0] - from[0]) * (level - low)) / (high - low);
  });
  const most = Math.max(...touched);
  return Number.isFinite(most) ? most : null;
};
