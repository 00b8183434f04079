import { THIRD_OCTAVES } from '../quantities/index.ts';
import { laboratorySpread } from '../transmission/index.ts';

/** Of Rw between laboratories, dB. @source ISO 12999-1:2020, Table 3 (from memory) */
export const MEASURED_RATING_SPREAD = 1.2;

/** Added, in energy, where a band was not measured but carried over, dB. @source engineering judgement */
const CARRIED_OVER = 4;

/** Of an open slit or hole, dB: the size of a gap is never known well. @source engineering judgement */
export const APERTURE_SPREAD: readonly number[] = THIRD_OCTAVES.map(() => 3);

/**
 * Spread of a laboratory curve per band, one standard deviation, dB: what laboratories differ by.
 * @param extrapolated per band: null where measured
 */
export const measuredSpread = (extrapolated: readonly (string | null)[]): number[] =>
  THIRD_OCTAVES.map((band, i) =>
    Math.hypot(laboratorySpread(band), (extrapolated[i] ?? null) === null ? 0 : CARRIED_OVER),
  );
