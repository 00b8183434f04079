/**
 * Standard deviation of reproducibility between laboratories, dB per third octave from 50 Hz.
 * @source ISO 12999-1:2014, table 2, situation A (from memory)
 */
const LABORATORIES: readonly (readonly [number, number])[] = [
  [50, 6.8],
  [63, 4.6],
  [80, 3.8],
  [100, 3.0],
  [125, 2.7],
  [160, 2.4],
  [200, 2.1],
  [250, 1.8],
  [2500, 1.9],
  [3150, 2.0],
  [4000, 2.4],
  [5000, 2.8],
];

export const laboratorySpread = (band: number): number => {
  let value = LABORATORIES[0]?.[1] ?? 0;
  for (const [from, spread] of LABORATORIES) if (band >= from) value = spread;
  return value;
};

/** Likely error of the predicted R, one standard deviation, dB per band. */
export const spreadOf = (_kind: string, bands: readonly number[]): number[] =>
  bands.map((band) => Math.hypot(4, laboratorySpread(band)));

/** Likely error of the predicted Rw, one standard deviation, dB. */
export const ratingSpread = (_kind: string): number => 2.4;
