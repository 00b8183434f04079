import { bandNumber } from '../quantities/index.ts';

/** The octave form reads 125 Hz to 2 kHz, the third-octave form 100 Hz to 3.15 kHz. */
export type BandWidth = 'third' | 'octave';

/**
 * Whether nominal centres are octaves (each three third-octave steps above the last, on octave centres) or thirds.
 * @param bands nominal centres, Hz, ascending
 * @example bandWidth([125, 250, 500, 1000, 2000]) // 'octave'
 */
export const bandWidth = (bands: readonly number[]): BandWidth => {
  const numbers = bands.map(bandNumber);
  const octaves = numbers.every((n, i) => n % 3 === 0 && (i === 0 || n - (numbers[i - 1] ?? n) === 3));
  return octaves && numbers.length >= 2 ? 'octave' : 'third';
};
