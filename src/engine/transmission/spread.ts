import { ACCURACY_RECORD, ALL_CLASSES } from './accuracyRecord.ts';

/**
 * Standard deviation of reproducibility between laboratories, dB per third octave from the band named on.
 * @source ISO 12999-1:2014, table 2, situation A (from memory); below 50 Hz engineering judgement: continued
 */
const LABORATORIES: readonly (readonly [number, number])[] = [
  [25, 8.5],
  [31.5, 8],
  [40, 7.4],
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

/** What laboratories differ by in the middle bands is part of the measured record already, dB. */
const MIDDLE = 1.8;

/** Kinds of part without a record of their own are trusted less than the mean of all. */
const STRANGER = 1.3;

/** Rw itself differs between laboratories by this much, dB. @source ISO 12999-1:2014, table 4 (from memory) */
const LEAST_RATING_SPREAD = 1.2;

/**
 * Standard deviation between laboratories that measure the same part, dB.
 * @param band nominal third octave, Hz
 * @source ISO 12999-1:2014, table 2, situation A (from memory)
 */
export const laboratorySpread = (band: number): number => {
  let value = LABORATORIES[0]?.[1] ?? 0;
  for (const [from, spread] of LABORATORIES) if (band >= from) value = spread;
  return value;
};

/**
 * Likely error of the predicted R, one standard deviation: the root mean square error of the class in the measured
 * record, widened at low and high frequencies by what laboratories differ by there.
 * @param kind construction class
 * @param bands nominal third octaves, Hz
 * @returns dB per band
 * @validity laboratory conditions; workmanship and flanking on site come on top
 * @source tests/reference/tl (measured record); ISO 12999-1:2014, table 2 (from memory)
 * @example spreadOf('masonry', [500])[0] // about 4.0
 */
export const spreadOf = (kind: string, bands: readonly number[]): number[] => {
  const known = ACCURACY_RECORD[kind];
  const error = known?.bandError ?? ALL_CLASSES.bandError * (known ? 1 : STRANGER);
  return bands.map((band) => Math.sqrt(error ** 2 + Math.max(0, laboratorySpread(band) ** 2 - MIDDLE ** 2)));
};

/**
 * Likely error of the predicted Rw, one standard deviation, dB.
 * @param kind construction class
 * @source tests/reference/tl (measured record)
 * @example ratingSpread('masonry with lining') // 1.2
 */
export const ratingSpread = (kind: string): number => {
  const known = ACCURACY_RECORD[kind];
  return Math.max(LEAST_RATING_SPREAD, known?.ratingError ?? ALL_CLASSES.ratingError * (known ? 1 : STRANGER));
};
