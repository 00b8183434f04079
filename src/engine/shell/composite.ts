import { toReduction, toTransmission } from '../quantities/index.ts';

/** What nothing gets through is written as, dB: infinities stay inside. */
export const MOST_REDUCTION = 150;

/**
 * Sound reduction index of open areas S·τ within an area: R = −10 lg(ΣS·τ/ΣS), at most 150 dB.
 * @param openArea ΣS·τ, m², ≥ 0
 * @param area ΣS, m², > 0
 * @returns R, dB
 * @source EN 12354-3:2000, clause 4
 */
export const reductionOf = (openArea: number, area: number): number =>
  toReduction(Math.max(openArea / area, toTransmission(MOST_REDUCTION)));

/**
 * Sound reduction index of a whole made of parts: R = −10 lg(ΣS_i·10^(−R_i/10) / ΣS_i).
 * @param parts areas S_i, m², > 0, and sound reduction indices R_i, dB
 * @returns R, dB, between the least and the greatest R_i
 * @throws RangeError for an empty whole
 * @source EN 12354-3:2000, clause 4
 * @example compositeReduction([{ area: 68, R: 55 }, { area: 2, R: 30 }]) // 45.0
 */
export const compositeReduction = (parts: readonly { readonly area: number; readonly R: number }[]): number => {
  const area = parts.reduce((sum, part) => sum + part.area, 0);
  if (!(area > 0)) throw new RangeError(`area of the whole must be > 0 m², got ${area}`);
  return reductionOf(
    parts.reduce((sum, part) => sum + part.area * toTransmission(part.R), 0),
    area,
  );
};

/**
 * R that a part needs to let through no more than the rest of the wall: R_part = R_wall − 10 lg(S_wall/S_part).
 * @param wallR R of the wall, dB
 * @param wallArea S_wall, m², > 0
 * @param partArea S_part, m², > 0
 * @returns R_part for equal energy, dB (the whole is then 3 dB below the wall)
 * @source follows from EN 12354-3:2000, clause 4
 * @example equalEnergyReduction(55, 68, 2) // 39.7
 */
export const equalEnergyReduction = (wallR: number, wallArea: number, partArea: number): number =>
  wallR - 10 * Math.log10(wallArea / partArea);
