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
  const values: number[] = [];
  for (const band of bands) {
    const exact = curve.bands.indexOf(band);
    const at = exact >= 0 ? exact : curve.bands.findIndex((one) => bandNumber(one) === bandNumber(band));
    const value = curve.values[at];
    if (value === undefined || !Number.isFinite(value)) return null;
    values.push(value);
  }
  return values;
};
