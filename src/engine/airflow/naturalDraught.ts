import { AIR_MASS_DENSITY, GRAVITY } from './air.ts';

const ZERO_CELSIUS = 273.15;
/** Where AIR_MASS_DENSITY holds, K. */
const AT_DENSITY = 293.15;
/** Cp of a wall that faces the wind, and in its lee. @source EN 16798-7:2017, low walls, normal shielding (from memory) */
const FACING = 0.25;
const LEE = -0.5;

/** Weather at the vents' outer mouths. */
export interface Weather {
  /** how far the outlet of the used air lies above the inlet of the fresh air, m; negative below it */
  readonly heightBetween: number;
  readonly indoorTemperature: number;
  readonly outdoorTemperature: number;
  /** undisturbed, at the height of the room, m/s, ≥ 0 */
  readonly wind: number;
  /** vent that faces it; the other lies in the lee */
  readonly windOn: 'supply' | 'extract';
}

/** Pressure outdoors at the mouths, against the room's own column of air, Pa. */
export interface OuterPressures {
  readonly supply: number;
  readonly extract: number;
}

/** No wind, and both mouths at one height or the air as warm outdoors as in. */
export const NO_DRAUGHT: OuterPressures = { supply: 0, extract: 0 };

/**
 * Pressure by which warm air rises between two openings: Δp = (ρo − ρi)·g·h, ρ = 1.2·293/T; near ρ·g·h·ΔT/T.
 * @param height h between them, m
 * @param indoor °C
 * @param outdoor °C
 * @returns Pa; positive where the room is warmer and the outlet higher
 * @validity room mixed and of one temperature
 * @source hydrostatics; gas law at constant pressure
 * @example stackPressure(30, 21, -18) // 53.80
 */
export const stackPressure = (height: number, indoor: number, outdoor: number): number =>
  AIR_MASS_DENSITY * AT_DENSITY * GRAVITY * height * (1 / (outdoor + ZERO_CELSIUS) - 1 / (indoor + ZERO_CELSIUS));

/**
 * Pressure of the wind on a wall: Cp·½ρU².
 * @param speed U, m/s
 * @param faces true where the wall faces it; false in the lee
 * @returns Pa
 * @validity low building among others; gusts and other directions differ by its whole amount
 * @source EN 16798-7:2017 (form)
 * @example windPressure(5, true) // 3.75
 */
export const windPressure = (speed: number, faces: boolean): number =>
  ((faces ? FACING : LEE) * AIR_MASS_DENSITY * speed ** 2) / 2;

/** Pressure at the mouths by warmth and wind. */
export const outerPressures = (weather: Weather): OuterPressures => {
  const { heightBetween, indoorTemperature, outdoorTemperature, wind, windOn } = weather;
  return {
    supply: windPressure(wind, windOn === 'supply'),
    extract:
      windPressure(wind, windOn === 'extract') - stackPressure(heightBetween, indoorTemperature, outdoorTemperature),
  };
};
