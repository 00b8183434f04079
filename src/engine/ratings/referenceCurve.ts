/** A reference curve with what its standard allows below it. */
export interface ReferenceCurve {
  /** nominal centres, Hz */
  readonly bands: readonly number[];
  /** dB, at the position of the unshifted curve */
  readonly values: readonly number[];
  /** value of the unshifted curve at 500 Hz, dB */
  readonly at500: number;
  /** largest allowed sum of the deficiencies, dB */
  readonly sumLimit: number;
  /** largest allowed deficiency of one band, dB */
  readonly singleLimit: number;
}

/** @source ISO 717-1:2013, Table 3 and 4.4 (third-octave bands) */
export const ISO_THIRD_OCTAVES: ReferenceCurve = {
  bands: [100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150],
  values: [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56],
  at500: 52,
  sumLimit: 32,
  singleLimit: Number.POSITIVE_INFINITY,
};

/** @source ISO 717-1:2013, Table 3 and 4.4 (octave bands; from memory, agrees with the third octaves' energy means) */
export const ISO_OCTAVES: ReferenceCurve = {
  bands: [125, 250, 500, 1000, 2000],
  values: [36, 45, 52, 55, 56],
  at500: 52,
  sumLimit: 10,
  singleLimit: Number.POSITIVE_INFINITY,
};

/** @source ASTM E413-16, contour table and clause 5 (sum 32 dB, no band more than 8 dB) */
export const STC_CONTOUR: ReferenceCurve = {
  bands: [125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000],
  values: [-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4],
  at500: 0,
  sumLimit: 32,
  singleLimit: 8,
};

/** Round half up to a multiple of 1/parts, as the rating standards round. @example roundTo(26.25, 10) // 26.3 */
export const roundTo = (value: number, parts: number): number => Math.floor(value * parts + 0.5 + 1e-9) / parts;

/**
 * Value at 500 Hz of the reference curve after the largest shift that its limits allow:
 * Σ max(0, ref + shift − R) ≤ sumLimit, each ≤ singleLimit.
 * @param R curve at the reference's bands, dB, already rounded as the standard asks
 * @param reference reference curve
 * @param step size of one shift, dB: 1, or 0.1 for the one-decimal form
 * @returns shifted value at 500 Hz, dB
 * @source ISO 717-1:2020, 4.4; ASTM E413-16, 5
 */
export const shiftedReference = (R: readonly number[], reference: ReferenceCurve, step: 1 | 0.1): number => {
  const perStep = step === 1 ? 10 : 1;
  // in whole tenths, so that a sum of exactly 32.0 is not lost to rounding
  const room = R.map((value, i) => Math.round(10 * value) - 10 * (reference.values[i] ?? 0));
  const allowed = (shift: number): boolean => {
    let sum = 0;
    for (const space of room) {
      const deficiency = Math.max(0, shift - space);
      if (deficiency > 10 * reference.singleLimit) return false;
      sum += deficiency;
    }
    return sum <= 10 * reference.sumLimit;
  };
  // no shift above this is allowed: Σ (shift − room) ≤ Σ max(0, shift − room) ≤ limit
  const most = (10 * reference.sumLimit + room.reduce((sum, space) => sum + space, 0)) / room.length;
  let shift = Math.ceil(most / perStep) * perStep;
  while (!allowed(shift)) shift -= perStep;
  return reference.at500 + shift / 10;
};
