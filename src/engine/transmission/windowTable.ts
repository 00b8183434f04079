import { SOUND_SPEED } from '../quantities/index.ts';
import type { AngleGrid } from './angleGrid.ts';
import type { BesselTable } from './besselTable.ts';
import { chebyshev, interpolate } from './chebyshev.ts';
import { radiatingSides } from './windowRadiation.ts';
import { SPLIT, SPLIT_FROM, fade, nearSum, samples, slowSum } from './windowSums.ts';

const LOWEST = 15;
const PER_OCTAVE = 5;
const FREQUENCIES = 50;
/** k0·(short side)·(1 − S) from which the large-window expansion holds to 0.02 dB */
const LARGE = 10;
/** Radiation factors of one window: rows of angles at frequencies five to the octave. */
export interface WindowTable {
  readonly rows: readonly Float64Array[];
}

/** σ of a large window: 1/c + (1/c³ − 3/c⁵)/(π·ab·k0²), c = cosθ: the end of the integral at R = 0 alone. */
const largeWindow = (c: number, area: number, k: number): number =>
  1 / c + (1 / c ** 3 - 3 / c ** 5) / (Math.PI * area * k * k);

const windowRow = (k: number, a: number, b: number, grid: AngleGrid, bessel: BesselTable): Float64Array => {
  const low = Math.max(0, 1 - LARGE / (k * b));
  const diagonal = k * Math.hypot(a, b);
  const split = k * b >= SPLIT;
  const points = chebyshev(10 + Math.ceil(0.5 * diagonal * (1 - low)), low, 1);
  const near = samples(k, a, b, 0, (x) => (split && x >= SPLIT ? Infinity : x + Math.PI));
  if (split) near.x.forEach((x, i) => (near.weight[i] = (near.weight[i] ?? 0) * fade(x)));
  near.x.forEach((x, i) => (near.weight[i] = (near.weight[i] ?? 0) * Math.sin(x)));
  const far = split
    ? samples(k, a, b, SPLIT_FROM, (x) => (x < SPLIT ? x + 6 : Math.min(1.7 * x, x + 4 / (1 - low))))
    : { x: [], weight: [] };
  far.x.forEach((x, i) => (far.weight[i] = (far.weight[i] ?? 0) * (1 - fade(x))));
  const values = points.nodes.map((S) => nearSum(near, S, bessel) + slowSum(far, S));
  return grid.sine.map((S, i) => {
    if (S < low) return largeWindow(grid.cosine[i] ?? 1, a * b, k);
    return interpolate(points, values, S);
  });
};

/**
 * Radiation factors of a window for every angle of a grid, 15 Hz to 12 kHz. Grazing angles by the integral at few
 * angles and interpolation (the factor is an entire function of sinθ), the rest by the large-window expansion.
 * @param width m
 * @param height m
 * @param grid angles
 * @param bessel table of J0 up to 8·SPLIT·√(1 + 1/64) at least
 * @returns table for radiationRow
 * @validity within 0.2 dB of windowRadiation, 0.01 dB as a rule
 * @source windowRadiation; expansions by Watson's lemma
 */
export const windowTable = (width: number, height: number, grid: AngleGrid, bessel: BesselTable): WindowTable => {
  const [a, b] = radiatingSides(width, height);
  return {
    rows: Array.from({ length: FREQUENCIES }, (_, i) =>
      windowRow((2 * Math.PI * LOWEST * 2 ** (i / PER_OCTAVE)) / SOUND_SPEED, a, b, grid, bessel),
    ),
  };
};

/** σ at one frequency for all angles, by cubic interpolation in ln f. @param out result, one value an angle */
export const radiationRow = (table: WindowTable, frequency: number, out: Float64Array): void => {
  const at = Math.min(Math.max(PER_OCTAVE * Math.log2(frequency / LOWEST), 1), FREQUENCIES - 3);
  const cell = Math.min(Math.floor(at), FREQUENCIES - 4);
  const t = at - cell;
  const r0 = table.rows[cell - 1];
  const r1 = table.rows[cell];
  const r2 = table.rows[cell + 1];
  const r3 = table.rows[cell + 2];
  if (!r0 || !r1 || !r2 || !r3) return;
  const c0 = (-t * (t - 1) * (t - 2)) / 6;
  const c1 = ((t + 1) * (t - 1) * (t - 2)) / 2;
  const c2 = (-(t + 1) * t * (t - 2)) / 2;
  const c3 = ((t + 1) * t * (t - 1)) / 6;
  for (let i = 0; i < out.length; i += 1)
    out[i] = c0 * (r0[i] ?? 0) + c1 * (r1[i] ?? 0) + c2 * (r2[i] ?? 0) + c3 * (r3[i] ?? 0);
};
