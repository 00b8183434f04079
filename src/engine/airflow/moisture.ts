import { requirePositive, requireWithin } from '../quantities/index.ts';

/** Magnus' constants over water. @source published worked example: 17.625, 243.04 °C, ±0.35 K from −40 to 60 °C */
const A = 17.625;
const B = 243.04;
const AT_FREEZING = 611.2;
/** Gas constant of water vapour, J/(kg·K). */
const VAPOUR_GAS = 461.5;
const ZERO_CELSIUS = 273.15;
/** Heat that evaporating sweat takes, J/g: latent W/0.68 is g/h. @source common practice: 2450 J/g */
const LATENT_PER_GRAM = 2450;

/**
 * Saturation pressure of water vapour: 611.2·exp(aT/(b + T)), Pa.
 * @param temperature °C, −40 to 60
 * @throws RangeError outside the range
 * @source Magnus' formula; within 0.4 % of ASHRAE's values from 5 to 50 °C
 * @example saturationPressure(25) // 3163
 */
export const saturationPressure = (temperature: number): number => {
  requireWithin('temperature', temperature, -40, 60, '°C');
  return AT_FREEZING * Math.exp((A * temperature) / (B + temperature));
};

/**
 * Dew point: γ = ln(RH/100) + aT/(b + T), Td = bγ/(a − γ).
 * @param temperature °C, −40 to 60
 * @param relativeHumidity %, > 0, ≤ 100
 * @returns °C
 * @throws RangeError outside the ranges
 * @source Magnus' formula
 * @example dewPoint(25, 50) // 13.8576
 */
export const dewPoint = (temperature: number, relativeHumidity: number): number => {
  requireWithin('temperature', temperature, -40, 60, '°C');
  requireWithin('relative humidity', relativeHumidity, 1e-3, 100, '%');
  const gamma = Math.log(relativeHumidity / 100) + (A * temperature) / (B + temperature);
  return (B * gamma) / (A - gamma);
};

/** Water that people give off. @param latent heat, W @returns kg/s @source latent heat of evaporation, 2450 J/g */
export const moistureOf = (latent: number): number => latent / LATENT_PER_GRAM / 1000;

/** Moisture of the room once it is steady. */
export interface RoomMoisture {
  /** % at room temperature, at most 100 */
  readonly relativeHumidity: number;
  /** °C */
  readonly dewPoint: number;
  /** more moisture than the air can hold */
  readonly saturated: boolean;
}

/**
 * Humidity of a ventilated room: vapour of the outdoor air plus G/Q, at room temperature.
 * @param generation G, kg/s
 * @param flow Q of outdoor air, m³/s, > 0
 * @param outdoor °C and %
 * @param indoor °C
 * @throws RangeError for a flow ≤ 0 or values out of range
 * @validity steady, nothing stored in linings
 * @source mass balance with the gas law of water vapour
 */
export const roomMoisture = (
  generation: number,
  flow: number,
  outdoor: { readonly temperature: number; readonly relativeHumidity: number },
  indoor: number,
): RoomMoisture => {
  requirePositive('flow', flow, 'm³/s');
  const outside = (outdoor.relativeHumidity / 100) * saturationPressure(outdoor.temperature);
  const added = (generation / flow) * VAPOUR_GAS * (indoor + ZERO_CELSIUS);
  // the outdoor vapour keeps its share of the air when it is warmed: its pressure stays
  const share = (100 * (outside + added)) / saturationPressure(indoor);
  const relativeHumidity = Math.min(100, share);
  return { relativeHumidity, dewPoint: dewPoint(indoor, relativeHumidity), saturated: share > 100 };
};
