/**
 * Root mean square error of the predictions against measured constructions, by construction class, dB: octave bands
 * 125 Hz to 4 kHz and single-number ratings; null where fewer than 6 samples were at hand.
 * Made by `npm run validate -- --record` from the 222 ratings and 270 octave bands in tests/reference/tl; not edited by hand.
 * The constants of the model were chosen on the same constructions, so strangers will fare somewhat worse.
 */
export interface ClassRecord {
  readonly ratings: number;
  readonly ratingError: number | null;
  readonly bands: number;
  readonly bandError: number | null;
  /** predicted less measured in the octave of 63 Hz: how many, mean and spread in dB; null where nothing of the class was measured there */
  readonly low: readonly [count: number, bias: number, deviation: number] | null;
}

export const ALL_CLASSES = { ratingError: 2, bandError: 3.4 };

export const ACCURACY_RECORD: Readonly<Record<string, ClassRecord>> = {
  'double glazing': { ratings: 15, ratingError: 1.8, bands: 42, bandError: 3.4, low: [3, 1.7, 3] },
  'floor: bars, empty': { ratings: 20, ratingError: 1.7, bands: 0, bandError: null, low: null },
  'floor: bars, filled': { ratings: 21, ratingError: 2.8, bands: 0, bandError: null, low: null },
  'floor: direct, empty': { ratings: 8, ratingError: 2.8, bands: 0, bandError: null, low: null },
  'floor: direct, filled': { ratings: 8, ratingError: 1.8, bands: 0, bandError: null, low: null },
  glass: { ratings: 4, ratingError: null, bands: 66, bandError: 2.5, low: [4, -3.4, 2.8] },
  masonry: { ratings: 6, ratingError: 1.8, bands: 30, bandError: 4, low: [3, -1.4, 4.4] },
  'masonry with lining': { ratings: 8, ratingError: 1.1, bands: 0, bandError: null, low: null },
  'separate leaves, empty': { ratings: 0, ratingError: null, bands: 6, bandError: 5.5, low: null },
  'separate leaves, filled': { ratings: 0, ratingError: null, bands: 6, bandError: 5.3, low: null },
  'single board': { ratings: 3, ratingError: null, bands: 54, bandError: 3, low: [5, 2.8, 4.4] },
  'stud wall: staggered with bars, empty': { ratings: 1, ratingError: null, bands: 0, bandError: null, low: null },
  'stud wall: staggered with bars, filled': { ratings: 2, ratingError: null, bands: 0, bandError: null, low: null },
  'stud wall: staggered, empty': { ratings: 3, ratingError: null, bands: 6, bandError: 4.8, low: null },
  'stud wall: staggered, filled': { ratings: 10, ratingError: 1.8, bands: 6, bandError: 4.3, low: null },
  'stud wall: steel with bars, empty': { ratings: 5, ratingError: null, bands: 0, bandError: null, low: null },
  'stud wall: steel with bars, filled': { ratings: 12, ratingError: 1.4, bands: 0, bandError: null, low: null },
  'stud wall: steel, empty': { ratings: 17, ratingError: 2.2, bands: 18, bandError: 3.5, low: null },
  'stud wall: steel, filled': { ratings: 25, ratingError: 2.2, bands: 18, bandError: 3.9, low: [2, 4.4, 2.2] },
  'stud wall: timber with bars, empty': { ratings: 3, ratingError: null, bands: 0, bandError: null, low: null },
  'stud wall: timber with bars, filled': { ratings: 15, ratingError: 1.8, bands: 6, bandError: 3.1, low: null },
  'stud wall: timber, empty': { ratings: 8, ratingError: 2.9, bands: 12, bandError: 3.1, low: [1, -1.6, 0] },
  'stud wall: timber, filled': { ratings: 6, ratingError: 3.9, bands: 0, bandError: null, low: null },
  'stud wall: twin, empty': { ratings: 8, ratingError: 1.8, bands: 0, bandError: null, low: null },
  'stud wall: twin, filled': { ratings: 14, ratingError: 1.3, bands: 0, bandError: null, low: null },
};
