import type { Spectrum } from '../quantities/index.ts';
import { toLevel, toRatio } from '../quantities/index.ts';
import { bandValues } from './bandValues.ts';
import { roundTo } from './referenceCurve.ts';
import { A_WEIGHTING } from './weighting.ts';

/** Transport noise spectrum and its A-weighted sum. @source ASTM E1332-16, Table 1 (from memory; sum and table agree) */
export const TRANSPORT_SPECTRUM: Spectrum = {
  bands: [80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000],
  values: [103, 102, 101, 98, 97, 95, 94, 93, 93, 91, 90, 89, 89, 88, 88, 87, 85, 84],
};
const A_WEIGHTED_SUM = 100.13;

/**
 * Outdoor-indoor transmission class before rounding: 100.13 − 10 lg Σ 10^((L − TL + A)/10), dB.
 * @param curve R (transmission loss), dB, per nominal third octave
 * @returns dB; null where a band of 80 Hz to 4 kHz is missing
 * @source ASTM E1332-16, clause 7
 */
export const unroundedOutdoorIndoorClass = (curve: Spectrum): number | null => {
  const { bands, values: L } = TRANSPORT_SPECTRUM;
  const TL = bandValues(curve, bands);
  const A = bandValues(A_WEIGHTING, bands);
  if (TL === null || A === null) return null;
  const passed = TL.reduce((sum, value, i) => sum + toRatio((L[i] ?? 0) - value + (A[i] ?? 0)), 0);
  return A_WEIGHTED_SUM - toLevel(passed);
};

/**
 * Outdoor-indoor transmission class, whole dB.
 * @param curve R (transmission loss), dB, per nominal third octave
 * @returns OITC, dB; null where a band of 80 Hz to 4 kHz is missing
 * @source ASTM E1332-16, clause 7
 */
export const outdoorIndoorClass = (curve: Spectrum): number | null => {
  const unrounded = unroundedOutdoorIndoorClass(curve);
  return unrounded === null ? null : roundTo(unrounded, 1);
};
