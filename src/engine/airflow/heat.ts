import { requirePositive } from '../quantities/index.ts';
import { HEAT_PER_VOLUME } from './air.ts';

/**
 * Rise of the room over the air that comes in: ΔT = Φ/(ρc·q).
 * @param heat Φ, W
 * @param flow q, m³/s, > 0
 * @returns K
 * @throws RangeError for a flow ≤ 0
 * @validity steady; no heat through walls
 * @source common practice: Φ = 1.2·q·ΔT in W, L/s, K
 * @example temperatureRise(1000, 0.04) // 20.8
 */
export const temperatureRise = (heat: number, flow: number): number => {
  requirePositive('flow', flow, 'm³/s');
  return heat / (HEAT_PER_VOLUME * flow);
};

/**
 * Flow that carries heat off at a rise: q = Φ/(ρc·ΔT).
 * @param heat Φ, W
 * @param rise ΔT, K, > 0
 * @returns m³/s
 * @throws RangeError for a rise ≤ 0
 * @source common practice: Φ = 1.2·q·ΔT in W, L/s, K
 * @example coolingFlow(1000, 5) // 0.167
 */
export const coolingFlow = (heat: number, rise: number): number => {
  requirePositive('rise of temperature', rise, 'K');
  return heat / (HEAT_PER_VOLUME * rise);
};
