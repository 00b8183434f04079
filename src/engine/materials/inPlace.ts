import type { BoardMaterial } from './material.ts';
import { isMasonry } from './plate.ts';

/** Below this density a wood-based board is a soft fibreboard, kg/m³. */
const SOFT_BOARD_DENSITY = 400;

/**
 * Loss that mounting adds to the material's own: joints, screws, edges, putty.
 * @param board material
 * @param thickness m
 * @param laminated whether the board is a ply of laminated glass (stands for the interlayer's loss beyond its document value)
 * @returns Δη, added to the loss factor; masonry gets its edge loss separately
 * @validity boards and sheets fixed as in practice
 * @source engineering judgement: fitted to measured constructions with the accuracy record of tests/reference/tl
 * @example addedLoss(gypsum, 0.0125, false) // 0.019
 */
export const addedLoss = (board: BoardMaterial, thickness: number, laminated: boolean): number => {
  if (isMasonry(board, thickness)) return 0;
  switch (board.family) {
    case 'gypsum':
      return 0.019;
    case 'glass':
      return laminated ? 0.3 : 0.04;
    case 'soft':
      return 0.3;
    case 'wood':
      return board.density < SOFT_BOARD_DENSITY ? 0.3 : 0;
    case 'mineral':
      return 0;
    case 'metal':
    case 'polymer':
    case 'other':
      return 0.05;
  }
};

/**
 * Factor on Young's modulus in place. Gypsum boards behave stiffer in walls than the dynamic E of the tables:
 * h·fc 33.5 instead of 35.9 Hz·m.
 * @source engineering judgement: fitted as addedLoss; Hopkins, Sound Insulation (2007), table A2 spans 32.3 to 43.5
 */
export const stiffnessInPlace = (board: BoardMaterial): number => (board.family === 'gypsum' ? 1.15 : 1);
