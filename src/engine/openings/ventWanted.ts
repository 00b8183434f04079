import { REFERENCE_AREA } from './measured.ts';

/** What a vent may cost its wall, dB. */
export const ALLOWED_COST = 1;

/**
 * Dn,e that a vent must reach so that its wall loses at most a given part:
 * Dn,e = R + 10 lg(n·A0/S) − 10 lg(10^(ΔR/10) − 1).
 * @param R of the wall without it, dB
 * @param area S of the wall, m², > 0
 * @param cost ΔR, dB, > 0
 * @param count n, vents in the wall alike
 * @returns Dn,e, dB
 * @source EN ISO 12354-3:2017, small elements
 * @example wantedDifference(65, 12, 1, 1) // 70.1
 */
export const wantedDifference = (R: number, area: number, cost: number, count: number): number =>
  R + 10 * Math.log10((count * REFERENCE_AREA) / area) - 10 * Math.log10(10 ** (cost / 10) - 1);

/**
 * R of a wall with vents: −10 lg(10^(−R/10) + Σ(A0/S)·10^(−Dn,e/10)), on the wall's own area.
 * @source EN ISO 12354-3:2017, small elements
 * @example withVents(60, 20, [45, 45]) // 44.86
 */
export const withVents = (R: number, area: number, differences: readonly number[]): number =>
  -10 *
  Math.log10(10 ** (-R / 10) + differences.reduce((sum, Dne) => sum + (REFERENCE_AREA / area) * 10 ** (-Dne / 10), 0));
