import { THIRD_OCTAVES } from '../quantities/index.ts';

/**
 * Reproducibility of laboratory measurements of R, one standard deviation, dB; 50 Hz to 5 kHz as printed, held beyond.
 * @source ISO 12999-1:2020, Table 2 as used in Annex B, Table B.1
 */
const REPRODUCIBILITY: readonly number[] = [
  6.8, 6.8, 6.8, 6.8, 4.6, 3.8, 3, 2.7, 2.4, 2.1, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.9, 2, 2.4, 2.8,
  2.8, 2.8, 2.8,
];

/** Of Rw between laboratories, dB. @source ISO 12999-1:2020, Table 3 (from memory) */
export const MEASURED_RATING_SPREAD = 1.2;

/** Added, in energy, where a band was not measured but carried over, dB. @source engineering judgement */
const CARRIED_OVER = 4;

/** Of an open slit or hole, dB: the size of a gap is never known well. @source engineering judgement */
export const APERTURE_SPREAD: readonly number[] = THIRD_OCTAVES.map(() => 3);

/**
 * Spread of a laboratory curve per band, one standard deviation, dB.
 * @param extrapolated per band: null where measured
 */
export const measuredSpread = (extrapolated: readonly (string | null)[]): number[] =>
  REPRODUCIBILITY.map((sigma, i) => ((extrapolated[i] ?? null) === null ? sigma : Math.hypot(sigma, CARRIED_OVER)));
