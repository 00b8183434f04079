import { AIR_BULK_MODULUS, AIR_DENSITY, AIR_IMPEDANCE, SOUND_SPEED } from '../../quantities/index.ts';
import { complex, over, scaled, times } from '../../quantities/index.ts';
import type { Complex } from '../../quantities/index.ts';

/** A filling at one frequency, as the wave equation needs it. */
export interface Fluid {
  /** 1/ρ, m³/kg */
  readonly specificVolume: Complex;
  /** 1/K, 1/Pa */
  readonly compressibility: Complex;
}

/** Loss factor of the air in the box, which stands for what the boards and the air itself take. */
export const AIR_LOSS = 1e-3;

/** Air in the box: ρ0, K0/(1 − jη). @source loss factor: engineering judgement */
export const airFluid: Fluid = {
  specificVolume: complex(1 / AIR_DENSITY),
  compressibility: scaled(complex(1, -AIR_LOSS), 1 / AIR_BULK_MODULUS),
};

/**
 * A bulk-reacting absorber as a fluid, with X = 1000·f/σ:
 * Zc = ρ0c0·(1 + 5.50·X^-0.632 − j·8.43·X^-0.632), k = (ω/c0)·(1 + 7.81·X^-0.618 − j·11.41·X^-0.618),
 * ρ = Zc·k/ω, K = Zc·ω/k.
 * @param frequency f, Hz, > 0
 * @param airflowResistivity σ, Pa·s/m², 500 to 40 000 (above it the regression is not passive at 50 Hz)
 * @validity fitted for f/σ > 0.01; extrapolated below
 * @source Miki, J. Acoust. Soc. Jpn (E) 11 (1990) 19-24. The same regression as the cavity absorbers', whose
 * coefficients are rounded at another place: up to 0.2 % apart, which a box of 100 dB would show as 0.2 dB
 * @example porousFluid(1000, 10_000).compressibility.re // 8.1e-6
 */
export const porousFluid = (frequency: number, airflowResistivity: number): Fluid => {
  const omega = 2 * Math.PI * frequency;
  const X = (1000 * frequency) / airflowResistivity;
  const impedance = scaled(complex(1 + 5.5 * X ** -0.632, -8.43 * X ** -0.632), AIR_IMPEDANCE);
  const wavenumber = scaled(complex(1 + 7.81 * X ** -0.618, -11.41 * X ** -0.618), omega / SOUND_SPEED);
  return {
    specificVolume: over(complex(omega), times(impedance, wavenumber)),
    compressibility: over(wavenumber, scaled(impedance, omega)),
  };
};
