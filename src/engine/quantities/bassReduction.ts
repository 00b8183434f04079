import { bandNumber } from './bands.ts';
import { toReduction, toTransmission } from './decibel.ts';
import type { Spectrum } from './spectrum.ts';

/** Nominal third octaves of the bass figure, Hz. */
export const BASS_BANDS: readonly number[] = [50, 63, 80, 100];

/**
 * The bass figure: energy mean of R over 50, 63, 80 and 100 Hz, −10 lg(¼ Σ 10^(−R/10)), dB.
 * @param curve R, dB, per nominal third octave; the four bands must be there
 * @throws RangeError where one of the four bands is missing
 * @source engineering judgement: the bands that carry the kick and the bass, below the range of the ratings
 * @example bassReduction({ bands: [50, 63, 80, 100], values: [20, 20, 20, 20] }) // 20
 */
export const bassReduction = (curve: Spectrum): number => {
  const numbers = curve.bands.map(bandNumber);
  const R = BASS_BANDS.map((band) => curve.values[numbers.indexOf(bandNumber(band))] ?? Number.NaN);
  if (!R.every((value) => Number.isFinite(value)))
    throw new RangeError('bass figure must have finite values at 50, 63, 80 and 100 Hz, got a gap');
  return toReduction(R.reduce((sum, value) => sum + toTransmission(value), 0) / BASS_BANDS.length);
};
