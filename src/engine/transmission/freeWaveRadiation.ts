import { SOUND_SPEED } from '../quantities/index.ts';

/**
 * What reveals square to a plate's edges add to the radiation of its free waves below fc: 2 − (f/fc)⁴. Each edge faces
 * its image in the reveal, and twice as much gets out; nothing is added at fc, where the whole area radiates.
 * @param frequency f, Hz, 0 to fc
 * @param critical fc, Hz, > 0
 * @returns factor on σ, 1 to 2
 * @validity reveals at least a quarter of a bending wave deep
 * @source Leppington, Broadbent and Heron, Proc. R. Soc. Lond. A 382 (1982) 245-271; factor for a baffle square to the
 *   plate: Hopkins, Sound Insulation (2007), section 2.9 (from memory)
 * @example revealFactor(100, 2000) // 2.00
 */
export const revealFactor = (frequency: number, critical: number): number => 2 - Math.min(1, frequency / critical) ** 4;

/**
 * Radiation factor of free bending waves of a rectangular plate in a baffle.
 * @param frequency f, Hz, > 0
 * @param critical fc, Hz, > 0
 * @param width l1, m, > 0
 * @param height l2, m, > 0
 * @param soundSpeed c0, m/s
 * @returns σ, 0 to 2
 * @validity simply supported plate in a rigid baffle
 * @source ISO 12354-1:2017, annex B.2 (rules from memory; reproduce its table L.2 to 1e-4)
 * @example freeWaveRadiation(100, 76.8, 5, 4, 340) // 1.0196 below its limit
 */
export const freeWaveRadiation = (
  frequency: number,
  critical: number,
  width: number,
  height: number,
  soundSpeed = SOUND_SPEED,
): number => {
  const f = frequency;
  const fc = critical;
  const first = (soundSpeed ** 2 / (4 * fc)) * (1 / width ** 2 + 1 / height ** 2);
  const s1 = f > fc ? 1 / Math.sqrt(1 - fc / f) : Infinity;
  const s2 = 4 * width * height * (f / soundSpeed) ** 2;
  const s3 = Math.sqrt((2 * Math.PI * f * (width + height)) / (16 * soundSpeed));
  if (first > fc / 2) return Math.min(2, s3, f < fc ? s2 : s1);
  if (f >= fc) return Math.min(2, s1);
  const lambda = Math.sqrt(f / fc);
  const rest = 1 - lambda * lambda;
  const d1 = (rest * Math.log((1 + lambda) / (1 - lambda)) + 2 * lambda) / (4 * Math.PI ** 2 * rest ** 1.5);
  const d2 =
    f > fc / 2
      ? 0
      : (8 * soundSpeed ** 2 * (1 - 2 * lambda * lambda)) /
        (fc * fc * Math.PI ** 4 * width * height * lambda * Math.sqrt(rest));
  const edges = ((2 * (width + height) * soundSpeed) / (width * height * fc)) * d1 + d2;
  return Math.min(2, f < first ? Math.min(edges, s2) : edges);
};
