import { SOUND_SPEED, requirePositive } from '../quantities/index.ts';
import type { BoardMaterial } from './material.ts';

/**
 * Bending stiffness of a plate per unit width: B = E·h³/(12·(1 − ν²)).
 * @param board E Pa, ν
 * @param thickness h, m, > 0
 * @returns B, N·m
 * @throws RangeError when the thickness is not > 0
 * @validity homogeneous isotropic plate
 * @source Cremer, Heckl and Petersson, Structure-Borne Sound, 3rd ed. (2005), ch. 3
 * @example bendingStiffness(glass, 0.006) // 1330
 */
export const bendingStiffness = (board: BoardMaterial, thickness: number): number => {
  requirePositive('thickness', thickness, 'm');
  return (board.youngsModulus * thickness ** 3) / (12 * (1 - board.poissonRatio ** 2));
};

/**
 * Critical frequency: bending waves of the plate run as fast as sound in air, fc = (c0²/2π)·√(m/B).
 * @param surfaceMass m, kg/m², > 0
 * @param stiffness B, N·m; 0 for a limp sheet
 * @returns fc, Hz; null for a limp sheet
 * @throws RangeError when the mass is not > 0
 * @validity thin-plate value; shear lowers the real coincidence dip by some per cent
 * @source Hopkins, Sound Insulation (2007), eq. 2.201; ISO 12354-1:2017, B.2
 * @example criticalFrequency(15, 1330) // 1991
 */
export const criticalFrequency = (surfaceMass: number, stiffness: number): number | null => {
  requirePositive('surfaceMass', surfaceMass, 'kg/m²');
  return stiffness > 0 ? (SOUND_SPEED ** 2 / (2 * Math.PI)) * Math.sqrt(surfaceMass / stiffness) : null;
};

/**
 * Quasi-longitudinal wave speed of a plate: cL = √(E/(ρ·(1 − ν²))).
 * @param board E Pa, ρ kg/m³, ν
 * @returns cL, m/s
 * @source Hopkins, Sound Insulation (2007), eq. 2.20
 * @example longitudinalSpeed(glass) // about 5200
 */
export const longitudinalSpeed = (board: BoardMaterial): number =>
  Math.sqrt(board.youngsModulus / (board.density * (1 - board.poissonRatio ** 2)));

/** From this thickness a mineral layer behaves as a wall rather than a board, m. @source engineering judgement: fitted class limit of the method */
export const MASONRY_THICKNESS = 0.05;

/** Whether a layer is masonry or concrete: mineral and at least 50 mm thick. @param thickness m */
export const isMasonry = (board: BoardMaterial, thickness: number): boolean =>
  board.family === 'mineral' && thickness >= MASONRY_THICKNESS - 1e-9;
