import { requirePositive, SOUND_SPEED } from '../quantities/index.ts';
import { bandMean } from './bandLines.ts';
import { besselJ1, struveH1 } from './cylinderFunctions.ts';

/** How sound meets the opening: from straight ahead, or from all sides of a room. */
export type Incidence = 'normal' | 'diffuse';

/**
 * Transmission coefficient of a circular hole at one frequency and normal incidence, on its own area:
 * τ0 = 4R0 / {4R0²(cos kd − X0 sin kd)² + [(R0² − X0² + 1) sin kd + 2X0 cos kd]²},
 * R0 = 1 − 2J1(2ka)/2ka, X0 = 2H1(2ka)/2ka.
 * @param frequency f, Hz, > 0
 * @param radius a, m, > 0
 * @param depth d, m, ≥ 0 (thickness of the wall)
 * @returns τ; above 1 at the hole's resonances
 * @validity rigid wall, no losses in the hole, wall large against the wavelength
 * @source Wilson & Soroka, Approximation to the diffraction of sound by a circular aperture in a rigid wall of finite
 * thickness, J. Acoust. Soc. Am. 37 (1965) 286-297 (from memory; equal to an independent recomputation within 0.05 dB)
 * @example holeTransmission(100, 0.05, 0.2) // 0.0667
 */
export const holeTransmission = (frequency: number, radius: number, depth: number): number => {
  const k = (2 * Math.PI * frequency) / SOUND_SPEED;
  const x = 2 * k * radius;
  const R0 = 1 - (2 * besselJ1(x)) / x;
  const X0 = (2 * struveH1(x)) / x;
  const cosine = Math.cos(k * depth);
  const sine = Math.sin(k * depth);
  const inPhase = 4 * R0 ** 2 * (cosine - X0 * sine) ** 2;
  const outOfPhase = ((R0 ** 2 - X0 ** 2 + 1) * sine + 2 * X0 * cosine) ** 2;
  return (4 * R0) / (inPhase + outOfPhase);
};

/**
 * Transmission coefficient of a circular hole per third octave, on its own area πa².
 * For diffuse sound τ0 is multiplied by 1 + 1/(1 + (ka)⁴): twice for a small hole, once for a large one.
 * @param diameter 2a, m, > 0
 * @param depth d, m, > 0
 * @param bands nominal third octaves, Hz
 * @param incidence normal, or diffuse as in a room
 * @returns τ per band
 * @throws RangeError for a size ≤ 0
 * @validity as holeTransmission
 * @source Wilson & Soroka (1965); the taper between the two limits is engineering judgement
 */
export const holeTransmissions = (
  diameter: number,
  depth: number,
  bands: readonly number[],
  incidence: Incidence,
): number[] => {
  requirePositive('diameter of the hole', diameter, 'm');
  requirePositive('depth of the hole', depth, 'm');
  const radius = diameter / 2;
  const taper = (frequency: number): number => {
    const ka = (2 * Math.PI * frequency * radius) / SOUND_SPEED;
    return incidence === 'diffuse' ? 1 + 1 / (1 + ka ** 4) : 1;
  };
  return bands.map((band) => bandMean(band, (f) => holeTransmission(f, radius, depth) * taper(f)));
};
