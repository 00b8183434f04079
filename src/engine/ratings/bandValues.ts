import type { Spectrum } from '../quantities/index.ts';
import { bandNumber } from '../quantities/index.ts';

/**
 * Values of a curve at the bands asked for, in their order; null where a band is missing or not a finite number.
 * Bands are matched by their number, so that 31.5 and 31.6 Hz name the same band.
 * @param curve values per nominal third-octave (or octave) band, Hz
 * @param bands nominal centres wanted, Hz
 * @example bandValues({ bands: [100, 125], values: [20, 21] }, [125]) // [21]
 */
export const bandValues = (curve: Spectrum, bands: readonly number[]): number[] | null => {
  const byNumber = new Map<number, number>();
  curve.bands.forEach((band, i) => byNumber.set(bandNumber(band), curve.values[i] ?? Number.NaN));
  const values = bands.map((band) => byNumber.get(bandNumber(band)) ?? Number.NaN);
  return values.every((value) => Number.isFinite(value)) ? values : null;
};
