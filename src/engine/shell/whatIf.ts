import { bassReduction, THIRD_OCTAVES } from '../quantities/index.ts';
import type { Ratings } from '../ratings/index.ts';
import { rateThirdOctaves, unrated } from '../ratings/index.ts';
import { reductionOf } from './composite.ts';
import type { WhatIf } from './shellResult.ts';

/** The curve of a whole with its figures. */
export interface WholeCurve {
  readonly R: readonly number[];
  readonly ratings: Ratings;
  readonly bassR: number;
}

/**
 * R of a whole from the open areas of all its parts, with ratings; nothing is rated where nothing gets through.
 * @param openArea ΣS·τ per band, m²
 * @param area ΣS, m²
 */
export const wholeCurve = (openArea: readonly number[], area: number): WholeCurve => {
  const R = openArea.map((passed) => reductionOf(passed, area));
  const curve = { bands: THIRD_OCTAVES, values: R };
  const silent = openArea.every((passed) => passed === 0);
  return { R, ratings: silent ? unrated() : rateThirdOctaves(curve), bassR: bassReduction(curve) };
};

/** Difference of two ratings; null where one is missing. */
export const ratingGain = (after: number | null, before: number | null): number | null =>
  after === null || before === null ? null : after - before;

/**
 * The whole if one part let through only a fraction of what it does: 0 perfect, ½ twice as good (R 3 dB higher).
 * @param present the whole as it is
 * @param total ΣS·τ per band, m²
 * @param part S·τ of the part per band, m²
 * @param fraction 0 to 1
 * @param area ΣS, m²
 */
export const ifPartPassed = (
  present: WholeCurve,
  total: readonly number[],
  part: readonly number[],
  fraction: number,
  area: number,
): WhatIf => {
  const left = total.map((passed, b) => Math.max(0, passed - (1 - fraction) * (part[b] ?? 0)));
  const { R, ratings, bassR } = wholeCurve(left, area);
  return { R, ratings, RwGain: ratingGain(ratings.Rw, present.ratings.Rw), bassGain: bassR - present.bassR };
};
