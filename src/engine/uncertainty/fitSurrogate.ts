import type { Assembly } from '../assembly/index.ts';
import { THIRD_OCTAVES } from '../quantities/index.ts';
import type { Prediction, Resolution } from '../transmission/index.ts';
import { assemblyInputs } from './assemblyInputs.ts';
import { coincidencesOf } from './coincidence.ts';
import { createGenerator } from './generator.ts';
import { inputKey } from './input.ts';
import { normalHypercube } from './latinHypercube.ts';
import { BYPASS_SPREAD } from './materialSpreads.ts';
import { perturbed } from './perturbed.ts';
import type { Departure } from './perturbed.ts';
import { RIDGE_NODES, ridgeInto, surrogateInto } from './surrogate.ts';
import type { Ridge, Surrogate } from './surrogate.ts';
import { FLAWLESS } from './workmanship.ts';
import type { Workmanship } from './workmanship.ts';

/** Handed in: R of an assembly at the size at hand. */
export type PredictAt = (assembly: Assembly, resolution: Resolution) => Prediction;

/** Where the polynomial meets the prediction, in standard deviations; √3 are the nodes of three-point Gauss-Hermite rule. */
const STAR = Math.sqrt(3);

/** Predictions kept apart to judge the surrogate. */
const HELD_OUT = 10;

const BANDS = THIRD_OCTAVES.length;

/** ln τ of a make-up moved from its middle; fixings, window frames and seams carry more or less than in the laboratory. */
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
  const tauOf = (key: 'links' | 'frame' | 'cap') => prediction.paths.find((path) => path.key === key)?.tau ?? [];
  const [links, frame, cap] = [tauOf('links'), tauOf('frame'), tauOf('cap')];
  return prediction.R.map((R, b) =>
    Math.log(Math.min(1, 10 ** (-R / 10) + more * (links[b] ?? 0) + past * ((frame[b] ?? 0) + (cap[b] ?? 0)))),
  );
};

/** A make-up moved along one direction of its inputs. @param z of each input */
const along =
  (keys: readonly string[], z: (input: number) => number): Departure =>
  (asked) => {
    const i = keys.indexOf(asked);
    return i < 0 ? 0 : z(i);
  };

/**
 * Fits the surrogate of a make-up by real predictions at draft resolution: eight for each board whose critical frequency moves,
 * two for each input at ±√3 standard deviations; then judges it by ten random make-ups that it has not seen.
 * A step at a time, so that the caller can show progress and stop.
 * @param assembly as drawn
 * @param workmanship what the build leaves to chance
 * @param predictAt predicts at the size of the part
 * @returns surrogate with its own error
 * @validity inputs within ±3 standard deviations; beside the ridges, inputs that act together are taken to add up in ln τ
 * @source second-order response surface without cross terms: Box and Wilson, J. R. Stat. Soc. B 13 (1951) 1-45
 * @example const steps = fitSurrogate(wall, FLAWLESS, predictAt)
 */
export function* fitSurrogate(
  assembly: Assembly,
  workmanship: Workmanship,
  predictAt: PredictAt,
): Generator<void, Surrogate> {
  const inputs = assemblyInputs(assembly, workmanship);
  const keys = inputs.map(({ key }) => key);
  const draft = (departure: Departure): number[] =>
    logTransmission(assembly, departure, workmanship, predictAt, 'draft');
  const drawn = logTransmission(assembly, () => 0, FLAWLESS, predictAt, 'draft');
  const centre = draft(() => 0);
  const shift = Float64Array.from(centre, (value, b) => value - (drawn[b] ?? 0));
  const damp = keys.indexOf(inputKey('damp', ''));

  const ridges: Ridge[] = [];
  for (const { weights } of coincidencesOf(assembly, inputs, workmanship)) {
    const table = new Float64Array(RIDGE_NODES.length * BANDS);
    for (const [node, t] of RIDGE_NODES.entries()) {
      if (t === 0) continue;
      const moved = draft(along(keys, (i) => (i === damp ? 0 : t * (weights[i] ?? 0))));
      moved.forEach((value, b) => (table[node * BANDS + b] = value - (centre[b] ?? 0)));
      yield;
    }
    ridges.push({ weights: Float64Array.from(weights), table });
  }

  const slope = new Float64Array(inputs.length * BANDS);
  const bend = new Float64Array(inputs.length * BANDS);
  const beside = (input: number, z: number): number[] => {
    const moved = draft(along(keys, (i) => (i === input ? z : 0)));
    const ridge = new Float64Array(BANDS);
    for (const { weights, table } of ridges) ridgeInto(table, z * (weights[input] ?? 0), ridge);
    return moved.map((value, b) => value - (centre[b] ?? 0) - (ridge[b] ?? 0));
  };
  for (const i of inputs.keys()) {
    const [above, below] = [beside(i, STAR), beside(i, -STAR)];
    for (let b = 0; b < BANDS; b += 1) {
      const [up, down] = [above[b] ?? 0, below[b] ?? 0];
      slope[i * BANDS + b] = (up - down) / (2 * STAR);
      bend[i * BANDS + b] = (up + down) / (2 * STAR ** 2);
    }
    yield;
  }

  const residual = new Float64Array(BANDS);
  const surrogate = { inputs, shift, ridges, slope, bend, residual };
  const middle = Float64Array.from(drawn);
  const columns = normalHypercube(HELD_OUT, inputs.length, createGenerator(1));
  const out = new Float64Array(BANDS);
  for (let draw = 0; draw < HELD_OUT; draw += 1) {
    const real = draft(along(keys, (i) => columns[i]?.[draw] ?? 0));
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
