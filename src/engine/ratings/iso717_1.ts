import type { Spectrum } from '../quantities/index.ts';
import { toLevel, toRatio } from '../quantities/index.ts';
import { SPECTRA } from './adaptationSpectra.ts';
import type { AdaptationRange } from './adaptationSpectra.ts';
import { bandValues } from './bandValues.ts';
import type { BandWidth } from './bandWidth.ts';
import { ISO_OCTAVES, ISO_THIRD_OCTAVES, roundTo, shiftedReference } from './referenceCurve.ts';

/**
 * Weighted sound reduction index Rw: the reference curve at 500 Hz after the largest shift with Σ of the unfavourable
 * deviations ≤ 32.0 dB (octaves 10.0 dB); R rounded to 0.1 dB first.
 * @param curve R, dB, per nominal band
 * @param width bands of the curve
 * @param step 1 dB, or 0.1 dB for the form that states an uncertainty
 * @returns Rw, dB; null where a band is missing
 * @source ISO 717-1:2020, 4.4; step 0.1: ISO 12999-1:2020, Annex B
 * @example weightedReduction({ bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 50) }) // 50
 */
export const weightedReduction = (curve: Spectrum, width: BandWidth = 'third', step: 1 | 0.1 = 1): number | null => {
  const reference = width === 'third' ? ISO_THIRD_OCTAVES : ISO_OCTAVES;
  const R = bandValues(curve, reference.bands);
  if (R === null) return null;
  const rounded = R.map((value) => roundTo(value, 10));
  return roundTo(shiftedReference(rounded, reference, step), 10);
};

/**
 * A-weighted level difference for an adaptation spectrum: X_A = −10 lg Σ 10^((L_i − R_i)/10), dB, not rounded.
 * @param curve R, dB, per nominal band
 * @param range spectrum and frequency range
 * @returns X_A = Rw + C (or + Ctr) before rounding, dB; null where a band is missing
 * @source ISO 717-1:2020, 4.5 and Annex B
 */
export const weightedDifference = (curve: Spectrum, range: AdaptationRange): number | null => {
  const { bands, values } = SPECTRA[range];
  const R = bandValues(curve, bands);
  if (R === null) return null;
  const rounded = R.map((value) => roundTo(value, 10));
  return -toLevel(rounded.reduce((sum, value, i) => sum + toRatio((values[i] ?? 0) - value), 0));
};

/**
 * Spectrum adaptation term: C_j = X_A,j (rounded to a whole dB) − Rw.
 * @param curve R, dB, per nominal band
 * @param range spectrum and frequency range
 * @param Rw weighted sound reduction index of the same curve, where it is known already
 * @returns C or Ctr, dB; null where a band is missing
 * @source ISO 717-1:2020, 4.5 and Annex B
 */
export const adaptationTerm = (
  curve: Spectrum,
  range: AdaptationRange,
  Rw: number | null = weightedReduction(curve, range.startsWith('octave') ? 'octave' : 'third'),
): number | null => {
  const XA = weightedDifference(curve, range);
  return Rw === null || XA === null ? null : roundTo(XA, 1) - Rw;
};

/**
 * The reference curve in its shifted position, for drawing beside R.
 * @param curve R, dB, per nominal third octave
 * @returns 100 Hz to 3.15 kHz, dB; null where a band is missing
 * @source ISO 717-1:2020, 4.4
 */
export const contourRw = (curve: Spectrum): Spectrum | null => {
  const Rw = weightedReduction(curve);
  if (Rw === null) return null;
  const { bands, values, at500 } = ISO_THIRD_OCTAVES;
  return { bands, values: values.map((value) => value + Rw - at500) };
};
