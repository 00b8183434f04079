import { SOUND_SPEED, complex, minus, over, plus, scaled, squaredModulus, times } from '../../quantities/index.ts';
import type { Complex } from '../../quantities/index.ts';
import { besselJ1, struveH1 } from '../cylinderFunctions.ts';
import type { PlaneScattering } from './boxResult.ts';

/** A duct between a port of the box and a room. */
export interface DuctEnd {
  /** clear area S, m² */
  readonly area: number;
  /** from the box to the mouth, m */
  readonly length: number;
  /** r = ζ·U/c0 of a grille, fan or valve at the mouth, in ρ0c0; 0 for an open mouth */
  readonly resistance: number;
}

/** Friction and heat at the wall of a duct: 2.9·10⁻⁵·√f/a added to the imaginary part of the wavenumber. */
const WALL_LOSS = 2.9e-5;
const ONE = complex(1);

/**
 * Radiation impedance of a mouth in a wall, in ρ0c0: z = 1 − J1(2ka)/ka + j·H1(2ka)/ka, a = √(S/π).
 * @param frequency f, Hz, > 0
 * @param area S, m², > 0
 * @source piston in an infinite baffle: Rayleigh; Kinsler et al., Fundamentals of Acoustics, 7.5
 * @example mouthImpedance(50, 0.0123).im // 0.049
 */
export const mouthImpedance = (frequency: number, area: number): Complex => {
  const ka = ((2 * Math.PI * frequency) / SOUND_SPEED) * Math.sqrt(area / Math.PI);
  return complex(1 - besselJ1(2 * ka) / ka, struveH1(2 * ka) / ka);
};

const phase = (frequency: number, { area, length }: DuctEnd): Complex => {
  const k = (2 * Math.PI * frequency) / SOUND_SPEED;
  const loss = (WALL_LOSS * Math.sqrt(frequency)) / Math.sqrt(area / Math.PI);
  const size = Math.exp(-loss * length);
  return complex(size * Math.cos(k * length), -size * Math.sin(k * length));
};

/**
 * Power that the plane wave carries from one room into the other, per power available to it at the first mouth:
 * g0 = [4·Re z1/|za + 1|²]·|s21/((1 − s11Γa)(1 − s22Γb) − s12·s21·ΓaΓb)|²·|1 − Γb|²·Re z2, Γ = (z − 1)/(z + 1).
 * @param plane S at the box's ports
 * @param frequency f, Hz, > 0
 * @param ends ducts at the first and the second port
 * @validity below the ducts' cut-on the plane wave is all there is
 * @source power waves; Thevenin source of a reciprocal mouth in a diffuse field (derived)
 */
export const planeGain = (
  { s11, s12, s21, s22 }: PlaneScattering,
  frequency: number,
  ends: readonly [DuctEnd, DuctEnd],
): number => {
  const [one, other] = ends;
  const [e1, e2] = [phase(frequency, one), phase(frequency, other)];
  const scale = Math.sqrt(other.area / one.area);
  const t11 = times(s11, times(e1, e1));
  const t22 = times(s22, times(e2, e2));
  const t12 = scaled(times(s12, times(e1, e2)), 1 / scale);
  const t21 = scaled(times(s21, times(e1, e2)), scale);
  const [z1, z2] = [mouthImpedance(frequency, one.area), mouthImpedance(frequency, other.area)];
  const za = plus(z1, complex(one.resistance));
  const zb = plus(z2, complex(other.resistance));
  const ga = over(minus(za, ONE), plus(za, ONE));
  const gb = over(minus(zb, ONE), plus(zb, ONE));
  const loop = minus(
    times(minus(ONE, times(t11, ga)), minus(ONE, times(t22, gb))),
    times(times(t12, t21), times(ga, gb)),
  );
  const through = squaredModulus(over(t21, loop)) * squaredModulus(minus(ONE, gb)) * z2.re;
  return ((4 * z1.re) / squaredModulus(plus(za, ONE))) * through;
};
