import { AIR_DENSITY, SOUND_SPEED } from '../quantities/index.ts';

/** Reference frequency of the equivalent absorption length, Hz. @source ISO 10848-1:2006, 3.9 */
const REFERENCE = 1000;

/**
 * Total loss factor of a heavy element in its building:
 * η_tot = η_int + ρ0·c0·σ/(π·f·m') + c0/(π²·S·√(f·fc))·Σ l_k·α_k.
 * @param element η_int; m' kg/m²; fc Hz; S m²; Σ l_k·α_k m, the edges with what they absorb
 * @param frequency f, Hz, > 0
 * @param radiation σ of free waves
 * @param air ρ0·c0 Pa·s/m and c0 m/s; the printed example uses 340 m/s
 * @returns η_tot
 * @validity homogeneous elements above their first resonances
 * @source ISO 12354-1:2017, annex C, (C.1) (from memory; reproduces Table L.3 for the inner wall of 13.75 m²)
 */
export const situLossFactor = (
  element: {
    readonly internalLoss: number;
    readonly surfaceMass: number;
    readonly criticalFrequency: number;
    readonly area: number;
    readonly edgeAbsorption: number;
  },
  frequency: number,
  radiation: number,
  air: { readonly impedance: number; readonly soundSpeed: number } = {
    impedance: AIR_DENSITY * SOUND_SPEED,
    soundSpeed: SOUND_SPEED,
  },
): number =>
  element.internalLoss +
  (air.impedance * radiation) / (Math.PI * frequency * element.surfaceMass) +
  (air.soundSpeed * element.edgeAbsorption) /
    (Math.PI ** 2 * element.area * Math.sqrt(frequency * element.criticalFrequency));

/**
 * Structural reverberation time: Ts = 2.2/(f·η).
 * @param frequency f, Hz, > 0
 * @param lossFactor η, > 0
 * @returns Ts, s
 * @source ISO 10848-1:2006, (14)
 * @example structuralReverberation(1000, 0.0044) // 0.5
 */
export const structuralReverberation = (frequency: number, lossFactor: number): number =>
  2.2 / (frequency * lossFactor);

/**
 * Equivalent absorption length of an element: a = 2.2·π²·S/(c0·Ts)·√(1000/f).
 * @param area S, m², > 0
 * @param reverberation Ts, s, > 0
 * @param frequency f, Hz, > 0
 * @param soundSpeed c0, m/s
 * @returns a, m
 * @source ISO 10848-1:2006, (12); ISO 12354-1:2017, Table L.4
 * @example absorptionLength(10, 0.5, 1000, 343) // 1.266
 */
export const absorptionLength = (
  area: number,
  reverberation: number,
  frequency: number,
  soundSpeed = SOUND_SPEED,
): number => ((2.2 * Math.PI ** 2 * area) / (soundSpeed * reverberation)) * Math.sqrt(REFERENCE / frequency);

/**
 * Velocity level difference over a junction in the building: Dv,ij,situ = K_ij − 10 lg(l_ij/√(a_i·a_j)), at least 0 dB.
 * @param junction K_ij, dB
 * @param length l_ij, m, > 0
 * @param first a_i, m, > 0
 * @param second a_j, m, > 0
 * @returns dB
 * @source ISO 12354-1:2017, 4.2; Table L.4
 * @example situVelocityDifference(6.4, 4, 10.8, 9.3) // 10.4
 */
export const situVelocityDifference = (junction: number, length: number, first: number, second: number): number =>
  Math.max(0, junction - 10 * Math.log10(length / Math.sqrt(first * second)));
