import { SOUND_SPEED, requirePositive } from '../quantities/index.ts';
import { besselJ0 } from './besselTable.ts';
import { gaussLegendre } from './gaussLegendre.ts';
import { windowShape } from './windowShape.ts';

/** Shortest to longest side beyond which a window is taken as the shape of this ratio and the same area. */
const SLIMMEST = 8;

/** Sides of the window that the radiation is worked out for: very slim parts are widened at equal area. */
export const radiatingSides = (width: number, height: number): readonly [number, number] => {
  const short = Math.min(width, height);
  const long = Math.max(width, height);
  if (long <= SLIMMEST * short) return [long, short];
  const side = Math.sqrt((long * short) / SLIMMEST);
  return [SLIMMEST * side, side];
};

/**
 * Radiation factor of a forced plane wave on a rectangular window in a rigid baffle, mean over all directions along
 * the surface: σ = k0/(2πab)·∫ sin(k0R)·J0(k0R·sinθ)·w(R) dR from 0 to √(a² + b²).
 * @param frequency f, Hz, > 0
 * @param angle θ, rad, 0 to π/2
 * @param width a, m, > 0
 * @param height b, m, > 0
 * @returns σ; 1/cosθ for large windows, k0²ab/2π for small ones
 * @throws RangeError when a value is not > 0
 * @validity flat baffle, free space on the radiating side
 * @source Villot, Guigou and Gagliardini, J. Sound Vib. 245 (2001) 433-455
 * @example windowRadiation(50, 0, 4, 2.5) // 0.808
 */
export const windowRadiation = (frequency: number, angle: number, width: number, height: number): number => {
  requirePositive('frequency', frequency, 'Hz');
  requirePositive('width', width, 'm');
  requirePositive('height', height, 'm');
  const k = (2 * Math.PI * frequency) / SOUND_SPEED;
  const S = Math.sin(angle);
  const { nodes, weights } = gaussLegendre(8, 0, 1);
  const breaks = [0, Math.min(width, height), Math.max(width, height), Math.hypot(width, height)];
  let sum = 0;
  for (let part = 0; part < 3; part += 1) {
    const from = breaks[part] ?? 0;
    const length = (breaks[part + 1] ?? 0) - from;
    const panels = Math.ceil((length * k) / Math.PI);
    for (let panel = 0; panel < panels; panel += 1)
      nodes.forEach((node, i) => {
        const R = from + (length * (panel + node)) / panels;
        const f = Math.sin(k * R) * besselJ0(k * R * S) * windowShape(R, width, height);
        sum += ((weights[i] ?? 0) * length * f) / panels;
      });
  }
  return (k * sum) / (2 * Math.PI * width * height);
};
