import { GRAVITY } from './air.ts';

const ZERO_CELSIUS = 273.15;
/** Of a door or window open to one side. @source common practice: 0.4 to 0.6 */
const DISCHARGE = 0.5;

/**
 * Air that a wide-open door exchanges by the difference of temperature: Q = (Cd/3)·W·H^1.5·√(g·ΔT/T).
 * @param width W, m, > 0
 * @param height H, m, > 0
 * @param inside °C
 * @param outside °C
 * @returns m³/s
 * @validity one door, still air, both sides mixed
 * @source Brown & Solvason, Int. J. Heat Mass Transfer 5 (1962) 859-868 (from memory)
 * @example openDoorExchange(0.9, 2, 22, 5) // 0.32
 */
export const openDoorExchange = (width: number, height: number, inside: number, outside: number): number => {
  const mean = (inside + outside) / 2 + ZERO_CELSIUS;
  return (DISCHARGE / 3) * width * height ** 1.5 * Math.sqrt((GRAVITY * Math.abs(inside - outside)) / mean);
};
