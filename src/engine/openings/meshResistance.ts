import { AIR_DENSITY, AIR_IMPEDANCE } from '../quantities/index.ts';

/** Holes of an insect mesh, and how thick it is woven, m. @source common practice: 18 × 16 wires an inch of 0.28 mm */
const HOLE = 1.2e-3;
const THICKNESS = 0.5e-3;
/** Dynamic viscosity of air, Pa·s. @source common practice: 20 °C */
const VISCOSITY = 1.81e-5;

/**
 * Resistance of an insect mesh in still air, in ρ0c0 on its whole face: r = 32ηt/(σ·ρ0c0·d²)·(√(1 + k²/32) +
 * √2/32·k·d/t), k = d·√(ωρ/4η).
 * @param frequency f, Hz, > 0
 * @param freeShare σ, 0 to 1, > 0
 * @returns r
 * @validity linear: particle speed well below 1 m/s
 * @source Maa, J. Acoust. Soc. Am. 104 (1998) 2861-2866 (from memory)
 * @example meshResistance(63, 0.7) // 0.0010
 */
export const meshResistance = (frequency: number, freeShare: number): number => {
  const k = HOLE * Math.sqrt((2 * Math.PI * frequency * AIR_DENSITY) / (4 * VISCOSITY));
  const inside = (32 * VISCOSITY * THICKNESS) / (freeShare * AIR_IMPEDANCE * HOLE ** 2);
  return inside * (Math.sqrt(1 + k ** 2 / 32) + (Math.SQRT2 / 32) * k * (HOLE / THICKNESS));
};
