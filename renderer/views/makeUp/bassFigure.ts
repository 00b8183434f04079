import { toReduction, toTransmission } from '../../../src/engine/quantities/index.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';

const BASS_BANDS: readonly number[] = [50, 63, 80, 100];

/** The bass figure: R over 50, 63, 80 and 100 Hz as one energy mean, dB; null where a band is missing. */
export const bassFigure = (prediction: Pick<Prediction, 'bands' | 'R'>): number | null => {
  const R = BASS_BANDS.map((band) => prediction.R[prediction.bands.indexOf(band)]);
  if (R.some((value) => value === undefined)) return null;
  return toReduction(R.reduce<number>((sum, value) => sum + toTransmission(value ?? 0), 0) / R.length);
};

/** True where the model is outside its validity in one of the bass bands. */
export const bassIsExtrapolated = ({ bands, extrapolated }: Pick<Prediction, 'bands' | 'extrapolated'>): boolean =>
  BASS_BANDS.some((band) => Boolean(extrapolated[bands.indexOf(band)]));
