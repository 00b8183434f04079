import { AIR_MASS_DENSITY } from './air.ts';
import { NO_DRAUGHT } from './naturalDraught.ts';
import type { OuterPressures } from './naturalDraught.ts';
import { hasFan, pathFanPressure, pathLoss } from './pathLoss.ts';
import type { AirPath } from './pathLoss.ts';

/** What the room lets through besides its vents. */
export interface Leakage {
  /** q = C·Δp^n, m³/(s·Pa^n) */
  readonly coefficient: number;
  readonly exponent: number;
  /** open door: clear area, m²; 0 closed */
  readonly openArea: number;
}

/** The room and its vents in balance. */
export interface OperatingPoint {
  /** of the room over outdoors, Pa */
  readonly pressure: number;
  /** by path id, m³/s in the path's own direction; negative where the air goes backwards */
  readonly flows: Readonly<Record<string, number>>;
  /** outdoor air that comes in by all ways, m³/s */
  readonly outdoorAir: number;
  /** through leaks and an open door, m³/s; positive outwards */
  readonly leak: number;
}

/** Of a sharp opening. @source common practice: 0.6 to 0.65 */
const DISCHARGE = 0.61;
/** Exponent of leaks. @source common practice: 0.65 for buildings */
export const LEAK_EXPONENT = 0.65;
/** Beyond any fan of such a room, Pa and m³/s. */
const MOST_PRESSURE = 5000;
const MOST_FLOW = 5;
const STEPS = 56;

/** Where a falling function crosses zero. */
const root = (falling: (x: number) => number, low: number, high: number): number => {
  let [from, to] = [low, high];
  for (let i = 0; i < STEPS; i += 1) {
    const middle = (from + to) / 2;
    if (falling(middle) > 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
};

/**
 * Leaks of a room from its blower-door result: C = n50·V/50^n.
 * @param changes n50, air changes per hour at 50 Pa, ≥ 0
 * @param volume m³
 * @source EN ISO 9972:2015 (form); exponent 0.65 common practice
 */
export const leakageOf = (changes: number, volume: number, openArea = 0): Leakage => ({
  coefficient: (changes * volume) / 3600 / 50 ** LEAK_EXPONENT,
  exponent: LEAK_EXPONENT,
  openArea,
});

/**
 * Flow through a path: where fan and outside pressure together equal its losses.
 * @param path its elements
 * @param driving pressure that pushes in the path's direction besides its fan, Pa
 * @param running whether fans run; a standing fan is taken as an open piece of duct
 * @returns m³/s; negative backwards
 * @validity a loss is the same in both directions
 * @source Darcy-Weisbach; fan by its curve
 */
export const pathFlow = (path: AirPath, driving: number, running: boolean): number => {
  if (path.elements.length === 0) return 0;
  const surplus = (flow: number): number =>
    driving + (running ? pathFanPressure(path, flow) : 0) - Math.sign(flow) * pathLoss(path, Math.abs(flow));
  return root(surplus, -MOST_FLOW, MOST_FLOW);
};

const leakFlow = ({ coefficient, exponent, openArea }: Leakage, pressure: number): number => {
  const size = Math.abs(pressure);
  const opening = DISCHARGE * openArea * Math.sqrt((2 * size) / AIR_MASS_DENSITY);
  return Math.sign(pressure) * (coefficient * size ** exponent + opening);
};

/**
 * Where the vents, the leaks, the fans and the weather of a room are in balance: what comes in goes out.
 * @param paths supply and extract
 * @param leakage of the room, halfway between the heights of the vents and facing no wind more than the other
 * @param running whether fans run
 * @param outer pressure outdoors at the mouths of the vents
 * @returns room pressure and flows
 * @validity neighbouring rooms at outdoor pressure
 * @source continuity; Darcy-Weisbach, orifice and power-law leakage
 */
export const operatingPoint = (
  paths: readonly AirPath[],
  leakage: Leakage,
  running: boolean,
  outer: OuterPressures = NO_DRAUGHT,
): OperatingPoint => {
  const driven = outer.supply !== 0 || outer.extract !== 0 || (running && paths.some(hasFan));
  const flowAt = (path: AirPath, pressure: number): number => {
    const inwards = outer[path.direction] - pressure;
    return pathFlow(path, path.direction === 'supply' ? inwards : -inwards, running);
  };
  const leakAt = (pressure: number): number => leakFlow(leakage, pressure - (outer.supply + outer.extract) / 2);
  const balance = (pressure: number): number =>
    paths.reduce(
      (sum, path) => sum + (path.direction === 'supply' ? 1 : -1) * flowAt(path, pressure),
      -leakAt(pressure),
    );
  const pressure = driven ? root(balance, -MOST_PRESSURE, MOST_PRESSURE) : 0;
  const flows = Object.fromEntries(paths.map((path) => [path.id, driven ? flowAt(path, pressure) : 0]));
  const leak = driven ? leakAt(pressure) : 0;
  const inward = paths.reduce(
    (sum, path) => {
      const flow = flows[path.id] ?? 0;
      return sum + Math.max(0, path.direction === 'supply' ? flow : -flow);
    },
    Math.max(0, -leak),
  );
  return { pressure, flows, outdoorAir: inward, leak };
};
