/** Limits of frequency times width, kHz·mm. @source ASHRAE Applications (2011), elbows, in metric (from memory) */
const LIMITS: readonly number[] = [48, 96, 190, 380, 760];

/** Insertion loss between the limits, dB: mitred, and round ones. @source as LIMITS */
const LOSSES = {
  bare: [0, 1, 5, 8, 4, 3],
  lined: [0, 1, 6, 11, 10, 10],
  vaned: [0, 1, 4, 6, 4, 4],
  vanedLined: [0, 1, 4, 7, 7, 7],
  round: [0, 1, 2, 3, 3, 3],
} as const;

/**
 * Insertion loss of a bend of 90° for sound that no longer travels as a plane wave.
 * @param frequency Hz, > 0
 * @param width of the duct in the plane of the bend, m, > 0
 * @param form how it is made, and whether its duct is lined
 * @returns dB
 * @validity octave-band figures; methods differ by 3 dB
 * @source ASHRAE Applications (2011), elbow tables (from memory)
 * @example elbowLoss(1000, 0.2, 'lined') // 11
 */
export const elbowLoss = (frequency: number, width: number, form: keyof typeof LOSSES): number => {
  const product = (frequency / 1000) * (width * 1000);
  const place = LIMITS.findIndex((limit) => product < limit);
  return LOSSES[form][place < 0 ? LIMITS.length : place] ?? 0;
};

/**
 * Insertion loss of several turns: three count in full, the rest by half; bare ones return what they hold back, so
 * only one of them counts.
 * @param count number of turns
 * @param one loss of a turn, dB
 * @param lined whether the way between them is lined
 * @source engineering judgement
 */
export const turnsLoss = (count: number, one: number, lined: boolean): number =>
  lined ? one * (Math.min(3, count) + Math.max(0, count - 3) / 2) : one * Math.min(1, count);
