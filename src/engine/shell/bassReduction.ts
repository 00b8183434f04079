import type { Spectrum } from '../quantities/index.ts';
import { toReduction, toTransmission } from '../quantities/index.ts';
import { bandValues } from '../ratings/index.ts';

const BASS: readonly number[] = [50, 63, 80, 100];

/**
 * The bass figure: energy mean of R over 50, 63, 80 and 100 Hz, −10 lg(¼ Σ 10^(−R/10)), dB.
 * @param curve R, dB, per nominal third octave; the four bands must be there
 * @throws RangeError where one of the four bands is missing
 * @source engineering judgement: the bands that carry the kick and the bass, below the range of the ratings
 * @example bassReduction({ bands: [50, 63, 80, 100], values: [20, 20, 20, 20] }) // 20
 */
export const bassReduction = (curve: Spectrum): number => {
  const R = bandValues(curve, BASS);
  if (R === null) throw new RangeError('bass figure must have finite values at 50, 63, 80 and 100 Hz, got a gap');
  return toReduction(R.reduce((sum, value) => sum + toTransmission(value), 0) / BASS.length);
};
