import type { LengthUnits } from '../store/preferences.svelte.ts';
import { shownUnit } from './units.ts';

const trimmed = (value: number, decimals: number): string => {
  const text = Number(value.toFixed(decimals)).toString();
  return text.replace('-', '\u2212');
};

const DECIMALS: Readonly<Record<string, number>> = { mm: 2, m: 3, dB: 1, Hz: 0, 'kg/m2': 1, 'kg/m3': 0, kg: 0, m2: 1 };

const feetAndInches = (metres: number): string => {
  const inches = Math.round((metres / 0.0254) * 10) / 10;
  const feet = Math.trunc(inches / 12);
  const rest = trimmed(inches - 12 * feet, 1);
  if (feet === 0) return `${rest} in`;
  return rest === '0' ? `${feet} ft` : `${feet} ft ${rest} in`;
};

/** A number as it stands in a field, without its unit (feet and inches carry theirs). */
export const showNumber = (value: number, unit: string, units: LengthUnits = 'metric'): string => {
  if (units === 'imperial' && unit === 'mm') return trimmed(value / 25.4, value < 25.4 ? 3 : 2);
  if (units === 'imperial' && unit === 'm') return feetAndInches(value);
  return trimmed(value, DECIMALS[unit] ?? 3);
};

/** The unit printed beside a field, and understood for a bare number in it. */
export const fieldUnit = (unit: string, units: LengthUnits = 'metric'): string => {
  if (units === 'imperial' && unit === 'mm') return 'in';
  if (units === 'imperial' && unit === 'm') return 'ft';
  return unit;
};

/** A value with its unit, as printed in text and tables. */
export const showQuantity = (value: number, unit: string, units: LengthUnits = 'metric'): string => {
  const number = showNumber(value, unit, units);
  if (units === 'imperial' && unit === 'm') return number;
  return `${number} ${shownUnit(fieldUnit(unit, units))}`;
};
