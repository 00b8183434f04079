import type { BoardMaterial } from './material.ts';
import { isMasonry } from './plate.ts';

/** Below this density a wood-based board is a soft fibreboard, kg/m³. */
const SOFT_BOARD_DENSITY = 400;

/** Loss that gaskets or putty add to a pane up to its critical frequency. @source engineering judgement: fitted, tests/reference/tl */
export const GASKET_LOSS = 0.05;

/** Loss that gypsum boards gain above coincidence: Δη·(f/fc − 1). @source as GASKET_LOSS */
export const GYPSUM_LOSS_RISE = 0.024;

/**
 * Loss that an absorber in the cavity adds to the boards it lies against, whatever way they bend.
 * @source as GASKET_LOSS; walls on timber studs gain 2 to 3 dB by their fill though their studs carry nearly all
 */
export const ABSORBER_LOSS = 0.005;

/**
 * How far the critical frequencies of gypsum boards lie on either side of the common one: ±5 %, which is ±10 % of Young's modulus.
 * @source as GASKET_LOSS; boards are stiffer along than across, and no batch is like the next (common practice)
 */
export const CRITICAL_SPREAD = 0.05;

/**
 * What masonry loses along its edges in a laboratory, Δη = X/√f with X in √Hz: halfway, as a ratio, between the least that
 * a laboratory may have with a wall of 400 kg/m² (0.3) and what the standard expects there (400/485).
 * @source form X/√f: Craik, Sound Transmission through Buildings (1996); 0.3: ISO 10140-5:2021, loss factor of heavy test
 *   walls; m'/485: ISO 12354-1:2017, formula C.3 (all from memory). Light blocks and thick slabs of tests/reference/tl
 *   contradict its proportion to mass.
 */
export const MASONRY_EDGE_LOSS = 0.5;

/** Gypsum boards as heavy as fire-rated ones and heavier, kg/m³. */
const FULL_GYPSUM_DENSITY = 690;

/**
 * Light regular gypsum boards ring more than fire-rated or dense ones: their cores are foamed and hold no glass fibre.
 * Code tables rate walls of regular board 2 to 6 dB below fire-rated board of nearly the same mass.
 */
const gypsumLoss = (density: number): number =>
  Math.max(0.002, 0.016 - (0.013 * Math.max(0, FULL_GYPSUM_DENSITY - density)) / 60);

/**
 * Loss that mounting adds to the material's own: joints, screws, paper, putty.
 * @param board material
 * @param thickness m
 * @param laminated whether the board is a ply of laminated glass (stands for the interlayer's loss beyond its document value)
 * @returns Δη, added to the loss factor; masonry and plain glass get their edge loss with the leaf
 * @validity boards and sheets fixed as in practice
 * @source engineering judgement: fitted to measured constructions with the accuracy record of tests/reference/tl
 * @example addedLoss(gypsum, 0.0125, false) // 0.016
 */
export const addedLoss = (board: BoardMaterial, thickness: number, laminated: boolean): number => {
  if (isMasonry(board, thickness)) return 0;
  switch (board.family) {
    case 'gypsum':
      return gypsumLoss(board.density);
    case 'glass':
      return laminated ? 0.4 : 0;
    case 'soft':
      return 0.3;
    case 'wood':
      return board.density < SOFT_BOARD_DENSITY ? 0.3 : 0;
    case 'mineral':
      return 0;
    case 'metal':
    case 'polymer':
    case 'other':
      return 0.06;
  }
};

/**
 * Factor on Young's modulus in place: 1.338·(12.7 mm/h)^0.7 for gypsum boards (h from 12.7 to 16 mm, the value at the end of
 * that range beyond it), 1 for all else. The paper liners carry a larger part of the bending the thinner the board;
 * coincidence dips of 12.7 and 16 mm boards show it.
 * @param board material
 * @param thickness h, m
 * @returns factor on E
 * @validity gypsum boards with paper liners
 * @source engineering judgement: fitted as addedLoss, and held to the least h·fc in print, 30.9 Hz·m: Hopkins, Sound
 *   Insulation (2007), table A2 (32.3 to 43.5), Vigran, Building Acoustics (2008), table 8.2
 * @example stiffnessInPlace(gypsum, 0.0127) // 1.338
 */
export const stiffnessInPlace = (board: BoardMaterial, thickness: number): number =>
  board.family === 'gypsum' ? 1.338 * (0.0127 / Math.min(0.016, Math.max(0.0127, thickness))) ** 0.7 : 1;
