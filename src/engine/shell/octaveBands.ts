import { bandNumber, toReduction, toTransmission, type Spectrum } from '../quantities/index.ts';
import type { ShellResult } from './shellResult.ts';

const thirdsOf = (bands: readonly number[], centre: number): readonly number[] =>
  bands.flatMap((band, i) => (Math.abs(bandNumber(band) - bandNumber(centre)) <= 1 ? [i] : []));

/**
 * Sound reduction index in an octave band from its third octaves: R_oct = -10 lg((1/n)·Σ 10^(-R_i/10)), n = 3.
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
 * Share of each part in the energy that gets out in an octave band: Σ w_i·share_i / Σ w_i over its third octaves,
 * w_i = 10^((L_i - R_i)/10) with the source's level L and the whole shell's R.
 * @param shell shares by third octave and R of the whole
 * @param source level by third octave, dB; bands it lacks count as silent; null is equal in all bands
 * @param centre nominal octave centre, Hz
 * @returns part id to share, 0 to 1; all 0 where the source is silent
 * @source energy balance of the definition of R (ISO 10140-2:2021, 3.1)
 */
export const octaveShares = (
  shell: Pick<ShellResult, 'bands' | 'R' | 'parts'>,
  source: Spectrum | null,
  centre: number,
): Readonly<Record<string, number>> => {
  const weights = thirdsOf(shell.bands, centre).map((i) => {
    const level = source ? source.values[source.bands.indexOf(shell.bands[i] ?? 0)] : 0;
    return { i, weight: level === undefined ? 0 : toTransmission((shell.R[i] ?? Infinity) - level) };
  });
  const whole = weights.reduce((sum, { weight }) => sum + weight, 0);
  return Object.fromEntries(
    shell.parts.map((part) => [
      part.id,
      whole > 0 ? weights.reduce((sum, { i, weight }) => sum + weight * (part.shareByBand[i] ?? 0), 0) / whole : 0,
    ]),
  );
};
