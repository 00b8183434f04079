import { interpolate } from './interpolate.ts';

/** Bend of a duct: mitred with or without vanes, or curved with an inner radius below or above the duct's width. */
export type BendForm = 'mitred' | 'vaned' | 'tight' | 'smooth';

/** ζ of a bend of 90° and 45°. @source published table of air-duct loss coefficients */
const BENDS: Readonly<Record<BendForm, readonly [at45: number, at90: number]>> = {
  mitred: [0.5, 1.3],
  vaned: [0.35, 0.7],
  tight: [0.2, 0.5],
  smooth: [0.05, 0.25],
};

/** ζ from a duct into a room, and from a room into a duct. @source published table of air-duct loss coefficients */
export const INTO_ROOM = 1;
export const INTO_DUCT = 0.35;

/** Two sharp right-angled turns close together. @source engineering judgement: no discount for closeness */
export const TURN_BACK = 2 * 1.3;

/** Free share of a grille, and ζ on the speed in its whole face. @source published table of air-duct loss coefficients */
const FREE_SHARE: readonly number[] = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 1];
const GRILLE: readonly number[] = [50, 20, 10, 6, 4, 3, 0];

/**
 * Loss coefficient ζ of a bend on the duct's speed.
 * @param angle degrees, 0 to 180; beyond 90° in proportion
 * @source published table of air-duct loss coefficients; between its angles straight, with vanes at 45° judgement
 * @example bendLoss('mitred', 90) // 1.3
 */
export const bendLoss = (form: BendForm, angle: number): number => {
  const [at45, at90] = BENDS[form];
  return angle > 90 ? (at90 * angle) / 90 : interpolate([0, 45, 90], [0, at45, at90], angle);
};

/**
 * Loss coefficient ζ of a grille or mesh on the speed in its whole face; between the table's points straight in lg ζ,
 * below its last one as (0.2/free share)².
 * @param freeShare free area over face area, > 0, ≤ 1
 * @source published table of air-duct loss coefficients (0.2 to 0.7)
 * @example grilleLoss(0.5) // 6
 */
export const grilleLoss = (freeShare: number): number => {
  if (freeShare < 0.2) return 50 * (0.2 / freeShare) ** 2;
  if (freeShare >= 0.7) return interpolate(FREE_SHARE, GRILLE, freeShare);
  return Math.exp(
    interpolate(
      FREE_SHARE,
      GRILLE.map((loss) => Math.log(Math.max(loss, 1))),
      freeShare,
    ),
  );
};

/**
 * Loss coefficient of a sudden enlargement on the smaller area's speed: (1 − S1/S2)².
 * @param ratio S1/S2, 0 to 1
 * @source Borda-Carnot
 */
export const enlargementLoss = (ratio: number): number => (1 - ratio) ** 2;

/**
 * Loss coefficient of a sudden contraction on the smaller area's speed:
 * K = 0.0696(1 − β⁵)λ² + (λ − 1)², λ = 1 + 0.622(1 − 0.215β² − 0.785β⁵).
 * @param ratio S2/S1 = β², 0 to 1
 * @source Rennels & Hudson, Pipe Flow (2012), sharp-edged contraction
 * @example contractionLoss(0.16) // 0.5301
 */
export const contractionLoss = (ratio: number): number => {
  const beta5 = ratio ** 2.5;
  const lambda = 1 + 0.622 * (1 - 0.215 * ratio - 0.785 * beta5);
  return 0.0696 * (1 - beta5) * lambda ** 2 + (lambda - 1) ** 2;
};

/** What a taper leaves of a sudden enlargement. @source published table: 0.15 below 8° */
export const TAPERED = 0.15;
