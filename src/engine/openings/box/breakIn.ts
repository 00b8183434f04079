import { SOUND_SPEED, exactCentre } from '../../quantities/index.ts';
import { REFERENCE_AREA } from '../measured.ts';
import type { BoxBand } from './boxResult.ts';

/** A wall of the box that stands in the loud room. */
export interface BoxWall {
  /** S_w, m² */
  readonly area: number;
  /** R_w per band, dB: 0 to 78 degrees, resonant part included */
  readonly reduction: readonly number[];
}

/**
 * Share of the power radiated inside a box that leaves by one of its ducts, by reciprocity:
 * η = <|p|²>·(1/S)·(H/k for kH < π, π/k² above), at most 1.
 * @param meanSquare <|p|²> over the plan for unit amplitude arriving in that duct
 * @param frequency f, Hz, > 0
 * @param area S of the duct, m², > 0
 * @param height H of the box, m, > 0
 * @validity below 160 Hz the formula would exceed 1, for the power of a source in a reactive box is not the free one
 * @source reciprocity of source and receiver (derived)
 */
export const breakInShare = (meanSquare: number, frequency: number, area: number, height: number): number => {
  const k = (2 * Math.PI * frequency) / SOUND_SPEED;
  const field = k * height < Math.PI ? height / k : Math.PI / k ** 2;
  return Math.min(1, (meanSquare * field) / area);
};

/**
 * Equivalent open area of the way through the walls of the box and out by its duct: A_eq = η·Σ S_w·10^(−R_w/10).
 * @param bands of solveBox, with the inside asked for
 * @param port the duct that leads to the quiet side: 1 for a box in the loud room, 0 for one in the quiet room
 * @param duct area of that duct, m²
 * @param height H of the box, m
 * @param walls of the box in the other room
 * @returns m² per band
 * @throws RangeError for bands without the inside
 */
export const breakInAreas = (
  bands: readonly BoxBand[],
  port: 0 | 1,
  duct: number,
  height: number,
  walls: readonly BoxWall[],
): number[] =>
  bands.map(({ band, lines }, i) => {
    const squares = lines.map(({ inside }) => inside?.meanSquare[port] ?? Number.NaN);
    const mean = squares.reduce((sum, it) => sum + it, 0) / squares.length;
    if (!Number.isFinite(mean)) throw new RangeError(`inside of the box must be solved at ${band} Hz, got none`);
    const through = walls.reduce((sum, { area, reduction }) => sum + area * 10 ** (-(reduction[i] ?? 0) / 10), 0);
    return breakInShare(mean, exactCentre(band), duct, height) * through;
  });

/** D_n,e of an equivalent open area, 10 lg(A0/A_eq), dB; areas of parallel ways are added first. */
export const differenceOfArea = (area: number): number => 10 * Math.log10(REFERENCE_AREA / area);
