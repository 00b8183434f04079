import { exactCentre } from '../quantities/index.ts';

/** Lines per third octave: the resonance dips of an opening are narrow. */
const LINES = 24;

/**
 * Mean over a third octave of a transmission coefficient: τ is averaged, not R.
 * @param nominal band centre, Hz
 * @param tau transmission coefficient at one frequency (Hz)
 * @returns mean τ over 24 lines f = f_c·10^(((i+½)/24 − ½)/10)
 */
export const bandMean = (nominal: number, tau: (frequency: number) => number): number => {
  const centre = exactCentre(nominal);
  let sum = 0;
  for (let i = 0; i < LINES; i += 1) sum += tau(centre * 10 ** (((i + 0.5) / LINES - 0.5) / 10));
  return sum / LINES;
};
