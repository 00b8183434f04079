import type { BoardFamily } from '../materials/index.ts';

/** How far a board as delivered may be from its values, one standard deviation. Relative, except the thickness (m). */
export interface BoardSpread {
  readonly density: number;
  readonly stiffness: number;
  /** of the logarithm */
  readonly loss: number;
  /** m, and as a share of the thickness; the larger counts */
  readonly thickness: readonly [metres: number, share: number];
}

/**
 * Spreads of boards between deliveries and makers, one standard deviation.
 * Thickness: half of the tolerance of the product standards (EN 520 ±0.5 mm gypsum, EN 572 ±0.2 mm glass, EN 324/300 ±0.3
 * to 0.8 mm wood-based; from memory). Density and stiffness: ranges that handbook tables print for one kind of board, taken
 * as ±2 standard deviations. Losses differ by a factor of about two between sources.
 * @source Hopkins, Sound Insulation (2007), table A2 (ranges of gypsum board, chipboard, masonry; from memory); EN 520, EN 572,
 *   EN 300 (from memory); engineering judgement where a table has a single value
 */
export const BOARD_SPREADS: Readonly<Record<BoardFamily, BoardSpread>> = {
  gypsum: { density: 0.02, stiffness: 0.12, loss: 0.25, thickness: [0.25e-3, 0] },
  wood: { density: 0.06, stiffness: 0.2, loss: 0.3, thickness: [0.3e-3, 0.01] },
  glass: { density: 0.01, stiffness: 0.03, loss: 0.4, thickness: [0.1e-3, 0] },
  metal: { density: 0.01, stiffness: 0.03, loss: 0.5, thickness: [0.01e-3, 0.03] },
  mineral: { density: 0.06, stiffness: 0.2, loss: 0.35, thickness: [0.5e-3, 0.01] },
  soft: { density: 0.1, stiffness: 0.25, loss: 0.3, thickness: [0.5e-3, 0.02] },
  polymer: { density: 0.05, stiffness: 0.2, loss: 0.4, thickness: [0.05e-3, 0.03] },
  other: { density: 0.08, stiffness: 0.2, loss: 0.4, thickness: [0.3e-3, 0.02] },
};

/** Spread of a board's thickness as a share of it, at most a fifth. @param thickness m */
export const thicknessShare = (family: BoardFamily, thickness: number): number => {
  const [metres, share] = BOARD_SPREADS[family].thickness;
  return Math.min(0.2, Math.max(metres / thickness, share));
};

/**
 * Flow resistivity of one wool differs within a batch and with how tightly it is laid; of the logarithm.
 * @source engineering judgement: tables of one density span a factor of about two (±2 standard deviations)
 */
export const RESISTIVITY_SPREAD = 0.25;

/** Weight of an absorber, relative. @source EN 13162 leaves density free; engineering judgement */
export const ABSORBER_DENSITY_SPREAD = 0.1;

/** Shear modulus of a damping layer, of the logarithm: temperature alone moves it that far. @source engineering judgement */
export const SHEAR_SPREAD = 0.5;

/** Loss factor of a damping layer, of the logarithm. @source engineering judgement */
export const SHEAR_LOSS_SPREAD = 0.2;

/**
 * Power past a part by seams, frames and the building, against what good laboratories leave: of the logarithm.
 * @source engineering judgement: the best of one kind of wall differ by some 5 dB either way between laboratories
 */
export const BYPASS_SPREAD = 0.55;

/** Depth of a cavity as built: 2 mm and 2 % of the depth. @source engineering judgement: studs and packing on an old wall */
export const depthSpread = (depth: number): number => Math.hypot(2e-3, 0.02 * depth);
