import { requirePositive } from '../quantities/index.ts';

/** A stretch of time in which nothing changes. */
export interface AirStep {
  readonly name: string;
  /** s, > 0 */
  readonly duration: number;
  /** CO2 given off, m³/s, ≥ 0 */
  readonly generation: number;
  /** outdoor air that comes in, m³/s, ≥ 0 */
  readonly flow: number;
}

/** CO2 over time; the values are parts per million, times are seconds from the start. */
export interface CarbonDioxideCourse {
  readonly times: readonly number[];
  readonly concentrations: readonly number[];
  readonly peak: number;
}

/** Below this share of the room per hour the course is a straight line: the exact form would lose its digits. */
const STILL = 1e-9;

/**
 * CO2 of a well-mixed room after a time: C(t) = Co + G/Q + (C0 − Co − G/Q)·e^(−Qt/V).
 * @param start C0, ppm
 * @param outdoor Co, ppm
 * @param generation G, m³/s, ≥ 0
 * @param flow Q of outdoor air, m³/s, ≥ 0
 * @param volume V of the room, m³, > 0
 * @param time t, s, ≥ 0
 * @returns ppm
 * @throws RangeError for a volume ≤ 0
 * @validity air mixed throughout the room
 * @source mass balance; published in the same form in handbooks (one copy prints C0 + Ci, a misprint)
 * @example concentrationAfter(0, 0, 5 / 3600, 500 / 3600, 500, 3600) // 6321
 */
export const concentrationAfter = (
  start: number,
  outdoor: number,
  generation: number,
  flow: number,
  volume: number,
  time: number,
): number => {
  requirePositive('volume of the room', volume, 'm³');
  if ((flow * time) / volume < STILL) return start + (1e6 * generation * time) / volume;
  const steady = outdoor + (1e6 * generation) / flow;
  return steady + (start - steady) * Math.exp((-flow * time) / volume);
};

/**
 * Flow of outdoor air that holds CO2 at a level for good: Q = G/(Ci − Co).
 * @param generation G, m³/s
 * @param target Ci, ppm, > outdoor
 * @param outdoor Co, ppm
 * @returns m³/s
 * @throws RangeError for a target that is not above the outdoor level
 * @source mass balance
 * @example requiredFlow(3.2e-5, 1420, 420) // 0.032
 */
export const requiredFlow = (generation: number, target: number, outdoor: number): number => {
  requirePositive('CO2 target above outdoors', target - outdoor, 'ppm');
  return (1e6 * generation) / (target - outdoor);
};

/**
 * CO2 over a session.
 * @param steps one after another
 * @param volume m³, > 0
 * @param outdoor ppm; the session begins there
 * @param interval between the points, s
 * @returns the course with its highest value
 */
export const carbonDioxideCourse = (
  steps: readonly AirStep[],
  volume: number,
  outdoor: number,
  interval = 60,
): CarbonDioxideCourse => {
  const times: number[] = [0];
  const concentrations: number[] = [outdoor];
  let began = 0;
  let start = outdoor;
  for (const { duration, generation, flow } of steps) {
    const at = (time: number): number => concentrationAfter(start, outdoor, generation, flow, volume, time);
    for (let time = interval; time < duration - interval / 2; time += interval) {
      times.push(began + time);
      concentrations.push(at(time));
    }
    const end = at(duration);
    began += duration;
    times.push(began);
    concentrations.push(end);
    start = end;
  }
  return { times, concentrations, peak: Math.max(...concentrations) };
};

/**
 * When a course first reaches a level, straight between its points.
 * @returns s; null where it never does
 */
export const timeToReach = ({ times, concentrations }: CarbonDioxideCourse, level: number): number | null => {
  const i = concentrations.findIndex((value) => value >= level);
  if (i < 0) return null;
  if (i === 0) return 0;
  const [before, after] = [concentrations[i - 1] ?? 0, concentrations[i] ?? 0];
  const [from, to] = [times[i - 1] ?? 0, times[i] ?? 0];
  return from + ((to - from) * (level - before)) / (after - before);
};
