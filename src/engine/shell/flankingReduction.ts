import { toReduction, toTransmission } from '../quantities/index.ts';

/** What a flanking path is made of: two elements, the junction between them, and the element it goes past. */
export interface FlankingPath {
  /** R_i of the element in which the sound arrives, dB */
  readonly first: number;
  /** R_j of the element that radiates, dB */
  readonly second: number;
  /** K_ij of a junction of heavy elements, or Dv,n of timber-framed ones, dB */
  readonly junction: number;
  /** l_ij, m, > 0 */
  readonly length: number;
  /** ΔR of linings on the way, dB */
  readonly improvement?: number;
}

/**
 * Sound reduction index of a flanking path, related to the separating element:
 * R_ij = (R_i + R_j)/2 + ΔR + K_ij + 10 lg(S_s/(l0·l_ij)), l0 = 1 m; with Dv,n in place of K_ij for timber frames.
 * @param path the two elements, their junction and linings; bands or weighted indices alike
 * @param separating S_s, m², > 0
 * @returns R_ij, dB
 * @throws RangeError when the area or the length is not > 0
 * @validity first-order paths; R_i of resonant transmission. A laboratory's R below the critical frequency holds forced
 *   transmission too and makes the path look up to some dB worse than it is.
 * @source EN 12354-1:2000, 4.4, annex H.3; ISO 12354-1:2017, L.2.1 (Dv,n)
 * @example flankingReduction({ first: 49, second: 49, junction: 12.4, length: 4.5 }, 11.5) // 65.5
 */
export const flankingReduction = (path: FlankingPath, separating: number): number => {
  const { first, second, junction, length, improvement = 0 } = path;
  if (!(length > 0)) throw new RangeError(`length of a junction must be > 0 m, got ${length}`);
  if (!(separating > 0)) throw new RangeError(`area that a path goes past must be > 0 m², got ${separating}`);
  return (first + second) / 2 + improvement + junction + 10 * Math.log10(separating / length);
};

/**
 * The same in a building of which the velocity level difference is known: R_ij = (R_i + R_j)/2 + ΔR + Dv,ij,situ +
 * 10 lg(S_s/√(S_i·S_j)).
 * @param first R_i,situ, dB
 * @param second R_j,situ, dB
 * @param difference Dv,ij,situ, dB. @see situVelocityDifference
 * @param areas S_s, S_i, S_j, m², > 0
 * @returns R_ij, dB
 * @source ISO 12354-1:2017, 4.2 and annex L
 */
export const situFlankingReduction = (
  first: number,
  second: number,
  difference: number,
  areas: { readonly separating: number; readonly first: number; readonly second: number },
): number =>
  (first + second) / 2 + difference + 10 * Math.log10(areas.separating / Math.sqrt(areas.first * areas.second));

/**
 * Apparent sound reduction index of the direct way and all flanking paths: R' = −10 lg Σ 10^(−R/10).
 * @param ways R of each, dB, at least one
 * @returns R', dB, not above the least of them
 * @throws RangeError without a way
 * @source EN 12354-1:2000, 4.1
 * @example apparentReduction([57, 65.5, 66, 66]) // 55.6
 */
export const apparentReduction = (ways: readonly number[]): number => {
  if (ways.length === 0) throw new RangeError('ways must be at least one, got none');
  return toReduction(ways.reduce((sum, R) => sum + toTransmission(R), 0));
};
