import { bandNumber } from './bands.ts';
import { toReduction, toTransmission } from './decibel.ts';

const thirdsOf = (bands: readonly number[], centre: number): readonly number[] =>
  bands.flatMap((band, i) => (Math.abs(bandNumber(band) - bandNumber(centre)) <= 1 ? [i] : []));

/**
 * Sound reduction index in an octave band from its third octaves: R_oct = -10 lg((1/3)·Σ 10^(-R_i/10)).
 * @param bands nominal third octaves, Hz
 * @param R sound reduction index, dB, one value per band
 * @param centre nominal octave centre, Hz
 * @returns R in the octave, dB; null where a third octave of it is missing
 * @source common practice: equal sound power in the three third octaves
 * @example octaveReduction([50, 63, 80], [20, 20, 20], 63) // 20
 */
export const octaveReduction = (bands: readonly number[], R: readonly number[], centre: number): number | null => {
  const thirds = thirdsOf(bands, centre).flatMap((i) => R[i] ?? []);
  if (thirds.length < 3) return null;
  return toReduction(thirds.reduce((sum, value) => sum + toTransmission(value), 0) / thirds.length);
};

/**
 * Share of one part in the energy that gets out in an octave: Σ w_i·share_i / Σ w_i over its third octaves,
 * w_i = 10^(-R_i/10) with R of the whole: the source is equally strong in the thirds of one octave.
 * @param bands nominal third octaves, Hz
 * @param R sound reduction index of the whole, dB, one value per band
 * @param shareByBand share of the part in each band, 0 to 1
 * @param centre nominal octave centre, Hz
 * @returns 0 to 1
 * @source energy balance from the definition of R (ISO 10140-2:2021, 3.1)
 * @example octaveShare([50, 63, 80], [20, 20, 20], [0.1, 0.2, 0.3], 63) // 0.2
 */
export const octaveShare = (
  bands: readonly number[],
  R: readonly number[],
  shareByBand: readonly number[],
  centre: number,
): number => {
  const thirds = thirdsOf(bands, centre).map((i) => ({
    share: shareByBand[i] ?? 0,
    weight: toTransmission(R[i] ?? Infinity),
  }));
  const whole = thirds.reduce((sum, { weight }) => sum + weight, 0);
  return whole > 0 ? thirds.reduce((sum, { share, weight }) => sum + weight * share, 0) / whole : 0;
};
