import type { Spectrum } from '../quantities/index.ts';
import { bandValues } from './bandValues.ts';
import { STC_CONTOUR, roundTo, shiftedReference } from './referenceCurve.ts';

/**
 * Sound transmission class: the contour's value at 500 Hz in its highest whole-number position with deficiencies of
 * at most 32 dB in all and at most 8 dB in any band; transmission loss rounded to whole dB first.
 * @param curve R (transmission loss), dB, per nominal third octave
 * @returns STC, dB; null where a band of 125 Hz to 4 kHz is missing
 * @source ASTM E413-16, clause 5 and contour table
 * @example soundTransmissionClass({ bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 50) }) // 50
 */
export const soundTransmissionClass = (curve: Spectrum): number | null => {
  const TL = bandValues(curve, STC_CONTOUR.bands);
  if (TL === null) return null;
  const whole = TL.map((value) => roundTo(value, 1));
  return shiftedReference(whole, STC_CONTOUR, 1);
};

/**
 * The STC contour in its highest allowed position, for drawing beside R.
 * @param curve R, dB, per nominal third octave
 * @returns 125 Hz to 4 kHz, dB; null where a band is missing
 * @source ASTM E413-16, clause 5
 */
export const contourSTC = (curve: Spectrum): Spectrum | null => {
  const STC = soundTransmissionClass(curve);
  return STC === null ? null : { bands: STC_CONTOUR.bands, values: STC_CONTOUR.values.map((value) => value + STC) };
};
