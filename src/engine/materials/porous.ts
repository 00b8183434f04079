import {
  AIR_DENSITY,
  AIR_IMPEDANCE,
  SOUND_SPEED,
  complex,
  decayingRoot,
  minus,
  over,
  plus,
  scaled,
  times,
} from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';

/** Share of air in a fibrous absorber. @source Hopkins, Sound Insulation (2007), 1.3.2: 0.94 to 0.99 */
const POROSITY = 0.98;

/** An absorber seen as a fluid: effective density kg/m³ and wavenumber 1/m. */
export interface EquivalentFluid {
  readonly density: Complex;
  readonly wavenumber: Complex;
}

/**
 * Fibrous absorber as an equivalent fluid, Miki's regression with a rigid frame:
 * Zc/ρ0c0 = 1 + 0.070·Y^-0.632 − j·0.107·Y^-0.632, k/k0 = 1 + 0.109·Y^-0.618 − j·0.160·Y^-0.618, Y = f/σ.
 * @param frequency f, Hz, > 0
 * @param airflowResistivity σ, Pa·s/m², > 0
 * @returns effective density and wavenumber
 * @validity 0.01 < Y < 1 in the fitted data; used outside it because it tends to sensible limits
 * @source Miki, J. Acoust. Soc. Jpn (E) 11 (1990) 19-24, eqs 30-34
 * @example mikiFluid(500, 8000).wavenumber.re // 14.7
 */
export const mikiFluid = (frequency: number, airflowResistivity: number): EquivalentFluid => {
  const omega = 2 * Math.PI * frequency;
  const Y = frequency / airflowResistivity;
  const yz = Y ** -0.632;
  const yk = Y ** -0.618;
  const impedance = complex(AIR_IMPEDANCE * (1 + 0.07 * yz), -AIR_IMPEDANCE * 0.107 * yz);
  const wavenumber = scaled(complex(1 + 0.109 * yk, -0.16 * yk), omega / SOUND_SPEED);
  return { density: scaled(times(impedance, wavenumber), 1 / omega), wavenumber };
};

/**
 * The same absorber with a limp frame that is dragged along by the air:
 * ρ' = (ρ·M − ρ0²)/(M + ρ − 2ρ0), M = ρb + φ·ρ0; the stiffness stays.
 * @param frequency f, Hz, > 0
 * @param airflowResistivity σ, Pa·s/m², > 0
 * @param bulkDensity ρb, kg/m³, > 0
 * @returns effective density and wavenumber
 * @validity soft fibrous absorbers not clamped between the leaves
 * @source Panneton, J. Acoust. Soc. Am. 122 (2007) EL217-EL222 (form from memory)
 * @example limpFluid(500, 8000, 16).density.re // 2.39
 */
export const limpFluid = (frequency: number, airflowResistivity: number, bulkDensity: number): EquivalentFluid => {
  const rigid = mikiFluid(frequency, airflowResistivity);
  const M = bulkDensity + POROSITY * AIR_DENSITY;
  const density = over(
    minus(scaled(rigid.density, M), complex(AIR_DENSITY ** 2)),
    plus(rigid.density, complex(M - 2 * AIR_DENSITY)),
  );
  // K is kept, so k² scales with the density
  const square = over(times(times(rigid.wavenumber, rigid.wavenumber), density), rigid.density);
  return { density, wavenumber: decayingRoot(square) };
};
