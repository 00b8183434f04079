import { requirePositive } from '../quantities/index.ts';
import type { Spectrum } from '../quantities/index.ts';

/**
 * Field-incidence mass law as a guide curve: R = 20·lg(m'·f) − 47.
 * @param surfaceMass m', kg/m², > 0
 * @param bands nominal centres, Hz
 * @returns R, dB per band, not below 0
 * @throws RangeError when the mass is not > 0
 * @validity limp single leaf between its lowest modes and coincidence
 * @source Fahy, Sound and Structural Vibration (1985), ch. 4 (constant 47 for ρ0c0 of air at 20 °C)
 * @example massLaw(8.4, [500]).values // [25.5]
 */
export const massLaw = (surfaceMass: number, bands: readonly number[]): Spectrum => {
  requirePositive('surfaceMass', surfaceMass, 'kg/m²');
  return { bands, values: bands.map((f) => Math.max(0, 20 * Math.log10(surfaceMass * f) - 47)) };
};
