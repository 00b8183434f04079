import { exactCentre, plus, scaled } from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';

/**
 * A wavenumber worked out once per third-octave centre and drawn straight between them, as k/f over ln f.
 * @param make the wavenumber at a frequency (Hz), 1/m
 * @returns the same, quickly
 */
export const tabulated = (make: (frequency: number) => Complex): ((frequency: number) => Complex) => {
  const known = new Map<number, Complex>();
  const at = (number: number): Complex => {
    const frequency = exactCentre(1000 * 10 ** (number / 10));
    const value = known.get(number) ?? scaled(make(frequency), 1 / frequency);
    known.set(number, value);
    return value;
  };
  return (frequency) => {
    const place = 10 * Math.log10(frequency / 1000);
    const below = Math.floor(place);
    const share = place - below;
    return scaled(plus(scaled(at(below), 1 - share), scaled(at(below + 1), share)), frequency);
  };
};
