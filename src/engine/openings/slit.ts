import { requirePositive, SOUND_SPEED } from '../quantities/index.ts';
import { bandMean } from './bandLines.ts';
import type { Incidence } from './hole.ts';

const EULER = 0.5772;
/** Beyond this k·w the end correction of the theory loses its meaning: the slit is an open window. */
const WIDEST = 4;

/**
 * Transmission coefficient of a long straight slit at one frequency, on its own area:
 * τ = mK cos²Ke / {2n²[sin²(K(X + 2e))/cos²Ke + (K²/2n²)(1 + cos K(X + 2e) cos KX)]},
 * K = kw, X = d/w, e = (ln(8/K) − 0.5772)/π.
 * @param frequency f, Hz, > 0
 * @param width w, m, > 0
 * @param depth d, m, > 0
 * @param incidence m = 4 normal, 8 diffuse
 * @param edge n = ½ along the edge of a surface, 1 in its middle
 * @returns τ; above 1 at resonances and for thin slits at low frequencies; 1 where k·w > 4
 * @validity slit longer than half a wavelength, k·w < 1; no losses inside (narrower than about 1 mm passes less)
 * @source Gomperts & Kihlman, The sound transmission loss of circular and slit-shaped apertures in walls,
 * Acustica 18 (1967) 144-150 (from memory; equal to an independent strip-piston recomputation within 0.2 dB)
 * @example slitTransmission(500, 0.005, 0.1, 'normal', false) // 0.120
 */
export const slitTransmission = (
  frequency: number,
  width: number,
  depth: number,
  incidence: Incidence,
  edge: boolean,
): number => {
  const K = (2 * Math.PI * frequency * width) / SOUND_SPEED;
  if (K > WIDEST) return 1;
  const m = incidence === 'diffuse' ? 8 : 4;
  const n = edge ? 0.5 : 1;
  const X = depth / width;
  const e = (Math.log(8 / K) - EULER) / Math.PI;
  const cos2 = Math.cos(K * e) ** 2;
  const through = K * (X + 2 * e);
  const resonance = Math.sin(through) ** 2 / cos2;
  const radiation = (K ** 2 / (2 * n ** 2)) * (1 + Math.cos(through) * Math.cos(K * X));
  return (m * K * cos2) / (2 * n ** 2 * (resonance + radiation));
};

/**
 * Transmission coefficient of a slit per third octave, on its own area (length × width).
 * @param width w, m, > 0
 * @param depth d, m, > 0
 * @param edge along the edge of a surface
 * @param bands nominal third octaves, Hz
 * @param incidence normal, or diffuse as in a room
 * @returns τ per band
 * @throws RangeError for a size ≤ 0
 * @validity as slitTransmission
 * @source Gomperts & Kihlman (1967)
 */
export const slitTransmissions = (
  width: number,
  depth: number,
  edge: boolean,
  bands: readonly number[],
  incidence: Incidence,
): number[] => {
  requirePositive('width of the slit', width, 'm');
  requirePositive('depth of the slit', depth, 'm');
  return bands.map((band) => bandMean(band, (f) => slitTransmission(f, width, depth, incidence, edge)));
};
