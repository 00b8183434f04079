import { THIRD_OCTAVES } from '../quantities/index.ts';
import type { DrawnPart } from './drawnPart.ts';
import { doubtGroups, doubtsOf, oneAtATime } from './doubts.ts';
import type { Doubt } from './doubts.ts';
import { curvesOf, figureIn } from './drawnCurves.ts';
import type { DrawnCurves, Result } from './drawnCurves.ts';
import { columnCount } from './ensemble.ts';
import type { Ensemble } from './ensemble.ts';
import { ERROR_COLUMNS } from './familyError.ts';
import { FIGURES, reportedFigure } from './figures.ts';
import type { FigureKey } from './figures.ts';
import { createGenerator } from './generator.ts';
import { curveIntervals, intervalOf, tallyOf } from './intervals.ts';
import type { CurveIntervals, Interval, Tally } from './intervals.ts';
import { normalHypercube } from './latinHypercube.ts';
import { eachFigure, liftsOf, mirrored } from './lean.ts';

const BANDS = THIRD_OCTAVES.length;

/** Draws between two looks at whether to go on. */
const STRIDE = 200;

/** What may come of one result: its curve, its figures, and what the doubt comes from. */
export interface SampledResult {
  readonly R: CurveIntervals;
  readonly figures: Readonly<Record<FigureKey, Interval>>;
  /** draws by reported whole-decibel figure: any target's chance follows from it */
  readonly tallies: Readonly<Record<FigureKey, Tally>>;
  readonly doubts: readonly Doubt[];
}

export interface SampleOptions {
  readonly samples: number;
  /** which sequence of chance; the same number gives the same draws */
  readonly start: number;
  /** factor on every spread; 1 as they are */
  readonly scale: number;
}

/** The columns that can move a part: its inputs and its family's. */
const columnsOf = (ensemble: Ensemble, part: DrawnPart): ReadonlySet<number> => {
  const { inputs, families } = ensemble;
  const keys = new Set(part.inputs.map(({ key }) => key));
  const own = inputs.flatMap(({ key, kind }, i) =>
    keys.has(key) || (kind === 'joints' && part.joints > 0) ? [i] : [],
  );
  const f = families.findIndex(({ name }) => name === part.family);
  const errors = f < 0 ? [] : Array.from({ length: ERROR_COLUMNS }, (_, i) => inputs.length + f * ERROR_COLUMNS + i);
  return new Set([...own, ...errors]);
};

/**
 * Draws many builds that might come of the same drawings and rates each. Errors of single bands and parts pull figures down on
 * average, since dips count more than peaks; the measured record shows no such lean, so its mean, found from mirrored
 * draws, is taken out of figures and curves.
 * @param ensemble parts, inputs and families
 * @param options number of draws, start, scale
 * @returns the whole first, then each part in order; yields its progress, 0 to 1
 * @validity inputs independent unless they share a key; spreads as stated
 * @source Latin hypercube sampling: McKay, Beckman and Conover (1979); ISO/IEC Guide 98-3/Suppl. 1:2008 (propagation by draws)
 */
export function* sampleEnsemble(
  ensemble: Ensemble,
  { samples, start, scale }: SampleOptions,
): Generator<number, readonly SampledResult[]> {
  const { parts } = ensemble;
  const all = parts.map((_, p) => p);
  const whole: Result = { parts: all, area: parts.reduce((sum, part) => sum + part.area, 0) };
  const results = [
    whole,
    ...(parts.length > 1 ? all.map((p) => ({ parts: [p], area: parts[p]?.ratedArea ?? 1 })) : []),
  ];
  const columns = normalHypercube(samples, columnCount(ensemble), createGenerator(start));
  yield 0.1;

  const middle = curvesOf(ensemble, results, columns, 0)(0);
  const lifts = liftsOf(middle, curvesOf(ensemble, results, mirrored(ensemble, columns), scale));
  yield 0.15;

  const bands = results.map(() => THIRD_OCTAVES.map(() => new Float64Array(samples)));
  const figures = results.map(() => eachFigure(() => new Float64Array(samples)));
  const curves = curvesOf(ensemble, results, columns, scale);
  for (let draw = 0; draw < samples; draw += 1) {
    curves(draw).forEach((drawn, r) => {
      for (let b = 0; b < BANDS; b += 1) {
        const column = bands[r]?.[b];
        if (column) column[draw] = (drawn.R[b] ?? 0) + (lifts[r]?.R[b] ?? 0);
      }
      for (const key of FIGURES) {
        const column = figures[r]?.[key];
        if (column) column[draw] = figureIn(key, drawn) + (lifts[r]?.figures[key] ?? 0);
      }
    });
    if (draw % STRIDE === STRIDE - 1) yield 0.15 + 0.7 * (draw / samples);
  }

  const single = oneAtATime(ensemble);
  const moved = curvesOf(ensemble, results, single, scale);
  const movedCurves: DrawnCurves[][] = results.map(() => []);
  for (let draw = 0; draw < 2 * single.length; draw += 1) {
    moved(draw).forEach((drawn, r) => movedCurves[r]?.push(drawn));
    if (draw % STRIDE === STRIDE - 1) yield 0.85 + 0.1 * (draw / (2 * single.length));
  }
  const groups = doubtGroups(ensemble);
  return results.map((_, r): SampledResult => {
    const part = r === 0 ? undefined : parts[r - 1];
    const moving = part ? columnsOf(ensemble, part) : null;
    const own = moving ? groups.filter((group) => group.columns.some((column) => moving.has(column))) : groups;
    const tallies = eachFigure((key) =>
      tallyOf(Array.from(figures[r]?.[key] ?? [], (value) => reportedFigure(key, value))),
    );
    return {
      doubts: doubtsOf(own, movedCurves[r] ?? []),
      tallies,
      figures: eachFigure((key) => intervalOf(figures[r]?.[key] ?? new Float64Array(1))),
      R: curveIntervals(bands[r] ?? []),
    };
  });
}
