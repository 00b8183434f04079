import { THIRD_OCTAVES } from '../quantities/index.ts';
import type { UncertainInput } from './input.ts';

const BANDS = THIRD_OCTAVES.length;

/** A function of one weighted sum of the inputs: what a critical frequency does as it moves. */
export interface Ridge {
  /** weight of each input in the sum */
  readonly weights: Float64Array;
  /** change of ln τ at the nodes of RIDGE_NODES: index node · bands + band */
  readonly table: Float64Array;
}

/** Steps in which a ridge is known, and how many of them on either side, in standard deviations of its sum. */
const [STEP, STEPS] = [0.6, 4];

/** Where a ridge is known: straight lines in between and beyond. */
export const RIDGE_NODES: readonly number[] = Array.from({ length: 2 * STEPS + 1 }, (_, i) => STEP * (i - STEPS));

/**
 * Change of ln τ of a make-up per third octave, of its standardised inputs: shift + Σ ridge(w·z) + Σ (a·z + b·z²).
 */
export interface Surrogate {
  readonly inputs: readonly UncertainInput[];
  /** what workmanship does at z = 0, per band; 0 where it is as in the laboratory */
  readonly shift: Float64Array;
  /** one for each board's critical frequency */
  readonly ridges: readonly Ridge[];
  /** a and b, per input and band: index input · bands + band; beside what the ridges do */
  readonly slope: Float64Array;
  readonly bend: Float64Array;
  /** error against held-out predictions, root mean square of ln τ per band: added to every draw as chance */
  readonly residual: Float64Array;
}

/** Adds what a ridge does at a sum t to `out`. */
export const ridgeInto = (table: Float64Array, t: number, out: Float64Array): void => {
  const place = t / STEP + STEPS;
  const node = Math.min(2 * STEPS - 1, Math.max(0, Math.floor(place)));
  const share = place - node;
  for (let b = 0, at = node * BANDS; b < BANDS; b += 1, at += 1)
    out[b] = (out[b] ?? 0) + (1 - share) * (table[at] ?? 0) + share * (table[at + BANDS] ?? 0);
};

/** ln τ by the surrogate, written into `out` for one draw. @param middle ln τ as predicted of the make-up as drawn */
export const surrogateInto = (
  surrogate: Surrogate,
  middle: Float64Array,
  columns: readonly (Float64Array | undefined)[],
  draw: number,
  scale: number,
  out: Float64Array,
): void => {
  const { shift, ridges, slope, bend } = surrogate;
  for (let b = 0; b < BANDS; b += 1) out[b] = (middle[b] ?? 0) + (shift[b] ?? 0);
  for (const { weights, table } of ridges) {
    let t = 0;
    for (let i = 0; i < columns.length; i += 1) t += (weights[i] ?? 0) * scale * (columns[i]?.[draw] ?? 0);
    ridgeInto(table, t, out);
  }
  for (let i = 0; i < columns.length; i += 1) {
    const z = scale * (columns[i]?.[draw] ?? 0);
    const square = z * z;
    for (let b = 0, at = i * BANDS; b < BANDS; b += 1, at += 1)
      out[b] = (out[b] ?? 0) + z * (slope[at] ?? 0) + square * (bend[at] ?? 0);
  }
};
