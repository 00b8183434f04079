import type { Assembly } from '../assembly/index.ts';
import { THIRD_OCTAVES } from '../quantities/index.ts';
import type { Prediction, Resolution } from '../transmission/index.ts';
import { assemblyInputs } from './assemblyInputs.ts';
import { createGenerator } from './generator.ts';
import type { UncertainInput } from './input.ts';
import { inputKey } from './input.ts';
import { normalHypercube } from './latinHypercube.ts';
import { BYPASS_SPREAD } from './materialSpreads.ts';
import { perturbed } from './perturbed.ts';
import type { Departure } from './perturbed.ts';
import { FLAWLESS } from './workmanship.ts';
import type { Workmanship } from './workmanship.ts';

/** Handed in: R of an assembly at the size at hand. */
export type PredictAt = (assembly: Assembly, resolution: Resolution) => Prediction;

/** Change of ln τ of a make-up per third octave as a polynomial of its standardised inputs: shift + Σ (a·z + b·z²). */
export interface Surrogate {
  readonly inputs: readonly UncertainInput[];
  /** what workmanship does at z = 0, per band; 0 where it is as in the laboratory */
  readonly shift: Float64Array;
  /** a and b, per input and band: index input · bands + band */
  readonly slope: Float64Array;
  readonly bend: Float64Array;
  /** error against held-out predictions, root mean square of ln τ per band: added to every draw as chance */
  readonly residual: Float64Array;
}

/** Where the polynomial meets the prediction, in standard deviations; √3 are the nodes of three-point Gauss-Hermite rule. */
const STAR = Math.sqrt(3);

/** Predictions kept apart to judge the polynomial. */
const HELD_OUT = 10;

const BANDS = THIRD_OCTAVES.length;

/** ln τ of a make-up moved from its middle; fixings and seams carry more or less than in the laboratory. */
export const logTransmission = (
  assembly: Assembly,
  departure: Departure,
  workmanship: Workmanship,
  predictAt: PredictAt,
  resolution: Resolution,
): number[] => {
  const prediction = predictAt(perturbed(assembly, departure, workmanship), resolution);
  const { middle, spread } = workmanship.fixings;
  const more = Math.exp(middle + spread * departure(inputKey('fixings', ''))) - 1;
  const past = Math.exp(BYPASS_SPREAD * departure(inputKey('bypass', ''))) - 1;
  const tauOf = (key: 'links' | 'cap') => prediction.paths.find((path) => path.key === key)?.tau ?? [];
  const [links, cap] = [tauOf('links'), tauOf('cap')];
  return prediction.R.map((R, b) =>
    Math.log(Math.min(1, 10 ** (-R / 10) + more * (links[b] ?? 0) + past * (cap[b] ?? 0))),
  );
};

/** ln τ by the polynomial, written into `out` for one draw. @param middle ln τ as predicted of the make-up as drawn */
export const surrogateInto = (
  surrogate: Surrogate,
  middle: Float64Array,
  columns: readonly (Float64Array | undefined)[],
  draw: number,
  scale: number,
  out: Float64Array,
): void => {
  const { shift, slope, bend } = surrogate;
  for (let b = 0; b < BANDS; b += 1) out[b] = (middle[b] ?? 0) + (shift[b] ?? 0);
  for (let i = 0; i < columns.length; i += 1) {
    const z = scale * (columns[i]?.[draw] ?? 0);
    const square = z * z;
    for (let b = 0, at = i * BANDS; b < BANDS; b += 1, at += 1)
      out[b] = (out[b] ?? 0) + z * (slope[at] ?? 0) + square * (bend[at] ?? 0);
  }
};

const at =
  (key: string, z: number): Departure =>
  (asked) =>
    asked === key ? z : 0;

/**
 * Fits the polynomial of a make-up: two real predictions for each input at ±√3 standard deviations, at draft resolution;
 * then judges it by predictions of ten random make-ups that it has not seen.
 * A step at a time, so that the caller can show progress and stop.
 * @param assembly as drawn
 * @param workmanship what the build leaves to chance
 * @param predictAt predicts at the size of the part
 * @returns surrogate with its own error
 * @validity inputs within ±3 standard deviations; inputs that act together are taken to add up in ln τ
 * @source second-order response surface without cross terms: Box and Wilson, J. R. Stat. Soc. B 13 (1951) 1-45
 * @example const steps = fitSurrogate(wall, FLAWLESS, predictAt)
 */
export function* fitSurrogate(
  assembly: Assembly,
  workmanship: Workmanship,
  predictAt: PredictAt,
): Generator<void, Surrogate> {
  const inputs = assemblyInputs(assembly, workmanship);
  const draft = (departure: Departure): number[] =>
    logTransmission(assembly, departure, workmanship, predictAt, 'draft');
  const drawn = logTransmission(assembly, () => 0, FLAWLESS, predictAt, 'draft');
  const centre = draft(() => 0);
  const shift = Float64Array.from(centre, (value, b) => value - (drawn[b] ?? 0));
  const slope = new Float64Array(inputs.length * BANDS);
  const bend = new Float64Array(inputs.length * BANDS);
  for (const [i, { key }] of inputs.entries()) {
    const above = draft(at(key, STAR));
    const below = draft(at(key, -STAR));
    for (let b = 0; b < BANDS; b += 1) {
      const [up, down, middle] = [above[b] ?? 0, below[b] ?? 0, centre[b] ?? 0];
      slope[i * BANDS + b] = (up - down) / (2 * STAR);
      bend[i * BANDS + b] = (up + down - 2 * middle) / (2 * STAR ** 2);
    }
    yield;
  }
  const residual = new Float64Array(BANDS);
  const surrogate = { inputs, shift, slope, bend, residual };
  const middle = Float64Array.from(drawn);
  const columns = normalHypercube(HELD_OUT, inputs.length, createGenerator(1));
  const out = new Float64Array(BANDS);
  for (let draw = 0; draw < HELD_OUT; draw += 1) {
    const real = draft((key) => columns[inputs.findIndex((input) => input.key === key)]?.[draw] ?? 0);
    surrogateInto(surrogate, middle, columns, draw, 1, out);
    for (let b = 0; b < BANDS; b += 1) residual[b] = (residual[b] ?? 0) + ((real[b] ?? 0) - (out[b] ?? 0)) ** 2;
    yield;
  }
  for (let b = 0; b < BANDS; b += 1) residual[b] = Math.sqrt((residual[b] ?? 0) / HELD_OUT);
  return surrogate;
}

/** Runs a stepwise calculation to its end. */
export const complete = <T>(steps: Generator<unknown, T>): T => {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};
