import { BASS_BANDS, bassReduction } from '../../../src/engine/quantities/index.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';

/** The bass figure of a prediction, dB. */
export const bassFigure = ({ bands, R }: Pick<Prediction, 'bands' | 'R'>): number =>
  bassReduction({ bands, values: R });

/** True where the model is outside its validity in one of the bass bands. */
export const bassIsExtrapolated = ({ bands, extrapolated }: Pick<Prediction, 'bands' | 'extrapolated'>): boolean =>
  BASS_BANDS.some((band) => Boolean(extrapolated[bands.indexOf(band)]));

/** What stands behind 50, 63 and 80 Hz, in words; null where the figures are measured ones. */
export const lowBandWords = ({ bands, extrapolated }: Pick<Prediction, 'bands' | 'extrapolated'>): string | null =>
  extrapolated[bands.indexOf(63)] ?? null;
