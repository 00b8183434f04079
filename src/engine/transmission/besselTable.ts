const STEPS = 128;

/** J0 for quick repeated use. */
export interface BesselTable {
  /** J0(i/steps) */
  readonly values: Float64Array;
  readonly steps: number;
}

/**
 * Bessel function of the first kind and order zero.
 * @param x any real
 * @returns J0(x), absolute error below 1e-7
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 9.4.1 and 9.4.3
 * @example besselJ0(2.404825557695773) // 0
 */
export const besselJ0 = (x: number): number => {
  const size = Math.abs(x);
  if (size <= 3) {
    const t = (size / 3) ** 2;
    return 1 + t * (-2.2499997 + t * (1.2656208 + t * (-0.3163866 + t * (0.0444479 + t * (-0.0039444 + t * 0.00021)))));
  }
  const t = 3 / size;
  const amplitude =
    0.79788456 +
    t * (-0.00000077 + t * (-0.0055274 + t * (-0.00009512 + t * (0.00137237 + t * (-0.00072805 + t * 0.00014476)))));
  const phase =
    size -
    0.78539816 +
    t * (-0.04166397 + t * (-0.00003954 + t * (0.00262573 + t * (-0.00054125 + t * (-0.00029333 + t * 0.00013558)))));
  return (amplitude * Math.cos(phase)) / Math.sqrt(size);
};

/** Table of J0 from 0 to `most` for linear interpolation (error below 1e-5). */
export const besselTable = (most: number): BesselTable => ({
  values: Float64Array.from({ length: Math.ceil(most * STEPS) + 2 }, (_, i) => besselJ0(i / STEPS)),
  steps: STEPS,
});
