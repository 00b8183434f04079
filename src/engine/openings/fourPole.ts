import { AIR_DENSITY, complex, over, plus, scaled, squaredModulus, times } from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';

/** Transfer matrix of pressure and volume velocity: (p1, U1) = T·(p2, U2). */
export interface FourPole {
  readonly a: Complex;
  readonly b: Complex;
  readonly c: Complex;
  readonly d: Complex;
}

export const STRAIGHT: FourPole = { a: complex(1), b: complex(0), c: complex(0), d: complex(1) };

/** One piece after another. */
export const chained = (one: FourPole, other: FourPole): FourPole => ({
  a: plus(times(one.a, other.a), times(one.b, other.c)),
  b: plus(times(one.a, other.b), times(one.b, other.d)),
  c: plus(times(one.c, other.a), times(one.d, other.c)),
  d: plus(times(one.c, other.b), times(one.d, other.d)),
});

/** A stretch that takes more than this (350 dB) is as good as closed: beyond it the hyperbolic functions overflow. */
const MOST_DECAY = -40;

/** cos z and sin z of a complex number. */
const cosine = ({ re, im }: Complex): Complex => complex(Math.cos(re) * Math.cosh(im), -Math.sin(re) * Math.sinh(im));
const sine = ({ re, im }: Complex): Complex => complex(Math.sin(re) * Math.cosh(im), Math.cos(re) * Math.sinh(im));

/**
 * A duct: [cos kl, jZ·sin kl; (j/Z)·sin kl, cos kl].
 * @param wavenumber k along the duct, 1/m; Im ≤ 0
 * @param impedance Z of the wave, pressure over volume velocity, Pa·s/m³
 * @param length l, m
 * @source Munjal, Acoustics of Ducts and Mufflers (1987), 2.18
 */
export const ductPole = (wavenumber: Complex, impedance: Complex, length: number): FourPole => {
  const whole = scaled(wavenumber, length);
  const kl = complex(whole.re, Math.max(MOST_DECAY, whole.im));
  const j = times(complex(0, 1), sine(kl));
  const size = squaredModulus(impedance);
  const inverse = scaled(complex(impedance.re, -impedance.im), 1 / size);
  return { a: cosine(kl), b: times(j, impedance), c: times(j, inverse), d: cosine(kl) };
};

/** A stretch of duct by its wavenumber and clear area: Z = ωρ/(kS). @param area m² */
export const wavePole = (frequency: number, wavenumber: Complex, area: number, length: number): FourPole =>
  ductPole(wavenumber, waveImpedance(frequency, wavenumber, area), length);

/** Z = ωρ/(kS), Pa·s/m³. */
export const waveImpedance = (frequency: number, wavenumber: Complex, area: number): Complex =>
  over(complex((2 * Math.PI * frequency * AIR_DENSITY) / area), wavenumber);

/** A closed end beside the way: Y = j·tan(kl)/Z. @param length l, m */
export const stubPole = (frequency: number, wavenumber: Complex, area: number, length: number): FourPole => {
  const kl = scaled(wavenumber, length);
  const tangent = over(sine(kl), cosine(kl));
  return branchPole(over(times(complex(0, 1), tangent), waveImpedance(frequency, wavenumber, area)));
};

/** Something that holds the air back where it stands: p1 − p2 = Z·U. */
export const seriesPole = (impedance: Complex): FourPole => ({ ...STRAIGHT, b: impedance });

/** Something beside the way: U1 − U2 = Y·p. */
export const branchPole = (admittance: Complex): FourPole => ({ ...STRAIGHT, c: admittance });

/** Mass of the air in a length of an area: jωρl/S. @param omega 1/s */
export const massOf = (omega: number, length: number, area: number): Complex =>
  complex(0, (omega * AIR_DENSITY * length) / area);

/**
 * Power that reaches a room through a vent, per power that the other room offers its mouth:
 * g = 4·Re Z1·Re Z2/|T11·Z2 + T12 + T21·Z1·Z2 + T22·Z1|².
 * @param pole between the mouths
 * @param Z1 radiation impedance of the first mouth, Pa·s/m³
 * @param Z2 of the other
 * @source maximum power of a Thevenin source (derived); reciprocal mouths in diffuse fields
 */
export const powerGain = (pole: FourPole, Z1: Complex, Z2: Complex): number => {
  const sum = plus(plus(times(pole.a, Z2), pole.b), plus(times(pole.c, times(Z1, Z2)), times(pole.d, Z1)));
  return (4 * Z1.re * Z2.re) / squaredModulus(sum);
};

/**
 * Transmission loss between ducts without reflection at their ends:
 * 20·lg|½(T11·√(Z2/Z1) + T12/√(Z1Z2) + T21·√(Z1Z2) + T22·√(Z1/Z2))|.
 * @param Z1 ρc/S of the first duct
 * @param Z2 ρc/S of the other
 * @source Munjal (1987), 3.2
 */
export const poleLoss = (pole: FourPole, Z1: number, Z2: number): number => {
  const root = Math.sqrt(Z1 * Z2);
  const sum = plus(
    plus(scaled(pole.a, Math.sqrt(Z2 / Z1)), scaled(pole.b, 1 / root)),
    plus(scaled(pole.c, root), scaled(pole.d, Math.sqrt(Z1 / Z2))),
  );
  return 10 * Math.log10(squaredModulus(sum) / 4);
};
