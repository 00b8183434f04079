import { complex } from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';
import type { ViscoelasticMaterial } from './material.ts';

/** Rise of the shear modulus with frequency, G ~ f^n. @source engineering judgement: mid slope of soft compounds in their transition region */
const SHEAR_EXPONENT = 0.4;

/**
 * Complex shear modulus of a damping layer: G(f) = G1k·(f/1000)^0.4·(1 + jη).
 * @param material G at 1 kHz (Pa) and loss factor
 * @param frequency f, Hz, > 0
 * @returns G, Pa
 * @validity room temperature, audio range
 * @source engineering judgement: fractional power law, exponent 0.4
 * @example shearModulusAt(compound, 1000).re // compound.shearModulus
 */
export const shearModulusAt = (material: ViscoelasticMaterial, frequency: number): Complex => {
  const G = material.shearModulus * (frequency / 1000) ** SHEAR_EXPONENT;
  return complex(G, G * material.lossFactor);
};
