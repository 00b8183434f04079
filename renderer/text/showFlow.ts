import type { LengthUnits } from '../store/preferences.svelte.ts';

/** Cubic feet per minute in a cubic metre per second. */
const CUBIC_FEET = 2118.88;

const figures = (value: number): string => {
  const rounded = Math.abs(value) < 10 ? Math.round(value * 10) / 10 : Math.round(value);
  return String(rounded).replace('-', '\u2212');
};

/** A flow of air in the unit of the window. @param flow m³/s */
export const flowIn = (flow: number, units: LengthUnits): number => flow * (units === 'imperial' ? CUBIC_FEET : 1000);

/** A flow of air as printed, without its unit. @param flow m³/s */
export const flowFigure = (flow: number, units: LengthUnits): string => figures(flowIn(flow, units));

export const flowUnit = (units: LengthUnits): string => (units === 'imperial' ? 'cfm' : 'L/s');

/** A flow of air as printed. @param flow m³/s */
export const showFlow = (flow: number, units: LengthUnits): string => `${flowFigure(flow, units)} ${flowUnit(units)}`;

/** A time as printed: minutes, from two hours on hours and minutes. @param seconds s */
export const showMinutes = (seconds: number): string => {
  const minutes = Math.round(seconds / 60);
  if (minutes < 120) return `${minutes} min`;
  const rest = minutes % 60;
  return `${Math.floor(minutes / 60)} h${rest === 0 ? '' : ` ${rest} min`}`;
};

/** A speed as printed. @param speed m/s */
export const showSpeed = (speed: number, units: LengthUnits): string =>
  units === 'imperial' ? `${Math.round(speed * 196.85)} ft/min` : `${speed.toFixed(1)} m/s`;
