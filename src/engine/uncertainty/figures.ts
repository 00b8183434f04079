import { THIRD_OCTAVES, bassReduction } from '../quantities/index.ts';
import { ISO_THIRD_OCTAVES, STC_CONTOUR, roundTo, weightedDifference } from '../ratings/index.ts';
import type { ReferenceCurve } from '../ratings/index.ts';

/** Single numbers that an interval and a target can be given for. */
export type FigureKey = 'Rw' | 'Rw_plus_C50_5000' | 'STC' | 'bass';

export const FIGURES: readonly FigureKey[] = ['Rw', 'Rw_plus_C50_5000', 'STC', 'bass'];

/** Indices of a reference curve's bands among the third octaves. */
const placesOf = (reference: ReferenceCurve): readonly number[] =>
  reference.bands.map((band) => THIRD_OCTAVES.indexOf(band));
const RW_PLACES = placesOf(ISO_THIRD_OCTAVES);
const STC_PLACES = placesOf(STC_CONTOUR);

/**
 * The contour's value at 500 Hz at exactly the largest shift allowed, without steps: Σ max(0, ref + s − R) = limit, and no
 * deficiency beyond the single limit. The reported rating is this, cut to whole decibels.
 */
const exactShift = (R: readonly number[], reference: ReferenceCurve, places: readonly number[]): number => {
  const room = Float64Array.from(places, (at, i) => (R[at] ?? 0) - (reference.values[i] ?? 0)).sort();
  let sum = 0;
  let shift = 0;
  // with the n lowest bands deficient: n·s − Σ room = limit
  for (let n = 1; n <= room.length; n += 1) {
    sum += room[n - 1] ?? 0;
    shift = (reference.sumLimit + sum) / n;
    if (n === room.length || shift <= (room[n] ?? 0)) break;
  }
  return reference.at500 + Math.min(shift, (room[0] ?? 0) + reference.singleLimit);
};

/**
 * A single number of a curve without the steps of its standard, as an uncertainty needs it.
 * @param key which figure
 * @param R dB per third octave 25 Hz to 10 kHz
 * @returns dB
 * @source ISO 717-1:2020, 4.4 and 4.5 (shifts as small as one likes: ISO 12999-1:2020, annex B, does so in tenths); ASTM
 *   E413-16, clause 5, bands not rounded
 * @example figureOf('bass', THIRD_OCTAVES.map(() => 50)) // 50
 */
export const figureOf = (key: FigureKey, R: readonly number[]): number => {
  switch (key) {
    case 'Rw':
      return exactShift(R, ISO_THIRD_OCTAVES, RW_PLACES);
    case 'STC':
      return exactShift(R, STC_CONTOUR, STC_PLACES);
    case 'Rw_plus_C50_5000':
      return weightedDifference({ bands: THIRD_OCTAVES, values: R }, 'C50_5000') ?? 0;
    case 'bass':
      return bassReduction({ bands: THIRD_OCTAVES, values: R });
  }
};

/**
 * The figure as it would be reported: whole decibels, Rw and STC never rounded up (the largest whole shift), the others rounded.
 * A target counts as met by the reported figure.
 * @source ISO 717-1:2020, 4.4 (shifts of 1 dB) and 4.5; the bass figure in the same way
 */
export const reportedFigure = (key: FigureKey, value: number): number =>
  key === 'Rw' || key === 'STC' ? Math.floor(value + 1e-6) : roundTo(value, 1);
