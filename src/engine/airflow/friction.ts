import { requirePositive } from '../quantities/index.ts';

const LAMINAR = 2300;

/**
 * Darcy's friction factor: 64/Re in laminar flow, otherwise Colebrook's 1/√f = −2 lg(ε/3.7D + 2.51/(Re√f)).
 * @param reynolds Re, > 0
 * @param relativeRoughness ε/D, ≥ 0
 * @returns f
 * @throws RangeError for a Reynolds number ≤ 0
 * @validity between Re 2300 and 4000 flow may be either; the larger, turbulent, value is taken
 * @source Colebrook, J. Inst. Civ. Eng. 11 (1939) 133-156
 * @example frictionFactor(1e5, 1e-4) // 0.018514
 */
export const frictionFactor = (reynolds: number, relativeRoughness: number): number => {
  requirePositive('Reynolds number', reynolds, '');
  if (reynolds < LAMINAR) return 64 / reynolds;
  // Swamee & Jain's explicit form to begin with; Newton on x = 1/√f converges in a few steps
  let x = -2 * Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9);
  for (let i = 0; i < 20; i += 1) {
    const inner = relativeRoughness / 3.7 + (2.51 * x) / reynolds;
    const slope = 1 + (2 / Math.LN10) * (2.51 / reynolds / inner);
    const step = (x + 2 * Math.log10(inner)) / slope;
    x -= step;
    if (Math.abs(step) < 1e-14 * Math.abs(x)) break;
  }
  return 1 / x ** 2;
};
