import type { NoteFigure } from '../../src/engine/quantities/index.ts';
import { shownUnit } from './units.ts';

const decimals = (size: number): number => (size < 1 ? 2 : size < 10 ? 1 : 0);

/** A figure of a note as it is read: "0.25 kN/m²", "3.4 dB", "212 Hz". */
export const noteFigureText = ({ value, unit }: NoteFigure): string => {
  const number = Number(value.toFixed(decimals(Math.abs(value))))
    .toString()
    .replace('-', '\u2212');
  return unit === '' ? number : `${number} ${shownUnit(unit)}`;
};
