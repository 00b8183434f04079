import { exactCentre } from '../../quantities/index.ts';

/**
 * Lines of a third octave, at the middles of equal parts of its logarithm: f_c·10^(((i + ½)/N − ½)/10).
 * @param band nominal centre, Hz
 * @param count N, ≥ 1
 */
export const bandFrequencies = (band: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => exactCentre(band) * 10 ** (((i + 0.5) / count - 0.5) / 10));
