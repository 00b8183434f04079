import { THIRD_OCTAVES } from '../quantities/index.ts';
import { reductionOf } from '../shell/index.ts';
import type { DrawnPart } from './drawnPart.ts';
import { doubtGroups, doubtsOf, oneAtATime } from './doubts.ts';
import type { Doubt } from './doubts.ts';
import { columnCount, createDrawer } from './ensemble.ts';
import type { Ensemble } from './ensemble.ts';
import { ERROR_COLUMNS } from './familyError.ts';
import { FIGURES, figureOf, reportedFigure } from './figures.ts';
import type { FigureKey } from './figures.ts';
import { createGenerator } from './generator.ts';
import { curveIntervals, intervalOf, tallyOf } from './intervals.ts';
import type { CurveIntervals, Interval, Tally } from './intervals.ts';
import { normalHypercube } from './latinHypercube.ts';

const BANDS = THIRD_OCTAVES.length;

/** Draws between two looks at whether to go on. */
const STRIDE = 200;

/** Mirrored draws by which the lean of a rating under errors of single bands is found. */
const MIRRORED = 150;

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

/** R of one result in one draw, from the parts' S·τ. */
interface Result {
  readonly parts: readonly number[];
  readonly area: number;
}

/** A result's curve in one draw, and the curve that its Rw and STC go by. */
export interface DrawnCurves {
  readonly R: readonly number[];
  readonly rated: readonly number[];
}

type Curves = (draw: number) => readonly DrawnCurves[];

/** The curve that a figure is rated from. */
const figureIn = (key: FigureKey, { R, rated }: DrawnCurves): number =>
  figureOf(key, key === 'Rw' || key === 'STC' ? rated : R);

/** Curves of every result for a set of columns. */
const curvesOf = (
  ensemble: Ensemble,
  results: readonly Result[],
  columns: readonly Float64Array[],
  scale: number,
): Curves => {
  const drawParts = createDrawer(ensemble, scale);
  const blank = (): Float64Array[] => ensemble.parts.map(() => new Float64Array(BANDS));
  const [open, ratedOpen] = [blank(), blank()];
  const reduction = ({ parts, area }: Result, passed: readonly Float64Array[]): number[] =>
    THIRD_OCTAVES.map((_, b) =>
      reductionOf(
        parts.reduce((sum, part) => sum + (passed[part]?.[b] ?? 0), 0),
        area,
      ),
    );
  return (draw) => {
    drawParts(columns, draw, (part, { openArea, ratedOpenArea }) => {
      open[part]?.set(openArea);
      ratedOpen[part]?.set(ratedOpenArea);
    });
    return results.map((result) => ({ R: reduction(result, open), rated: reduction(result, ratedOpen) }));
  };
};

/** Each draw of the families' errors and its mirror image, inputs at their middle. */
const mirrored = (ensemble: Ensemble, columns: readonly Float64Array[]): Float64Array[] =>
  columns.map((column, i) =>
    Float64Array.from({ length: 2 * MIRRORED }, (_, draw) => {
      const z = i < ensemble.inputs.length ? 0 : (column[Math.floor(draw / 2) % column.length] ?? 0);
      return draw % 2 === 0 ? z : -z;
    }),
  );

const eachFigure = <T>(of: (key: FigureKey) => T): Record<FigureKey, T> => ({
  Rw: of('Rw'),
  Rw_plus_C50_5000: of('Rw_plus_C50_5000'),
  STC: of('STC'),
  bass: of('bass'),
});

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
  const pilot = curvesOf(ensemble, results, mirrored(ensemble, columns), scale);
  const lean = results.map(() => eachFigure(() => 0));
  const curveLean = results.map(() => new Float64Array(BANDS));
  for (let draw = 0; draw < 2 * MIRRORED; draw += 1)
    pilot(draw).forEach((drawn, r) => {
      const sum = lean[r];
      const sums = curveLean[r];
      for (let b = 0; sums && b < BANDS; b += 1) sums[b] = (sums[b] ?? 0) + (drawn.R[b] ?? 0) / (2 * MIRRORED);
      if (sum) for (const key of FIGURES) sum[key] += figureIn(key, drawn) / (2 * MIRRORED);
    });
  const offset = middle.map((centre, r) => eachFigure((key) => figureIn(key, centre) - (lean[r]?.[key] ?? 0)));
  yield 0.15;

  const bands = results.map(() => THIRD_OCTAVES.map(() => new Float64Array(samples)));
  const figures = results.map(() => eachFigure(() => new Float64Array(samples)));
  const curves = curvesOf(ensemble, results, columns, scale);
  for (let draw = 0; draw < samples; draw += 1) {
    curves(draw).forEach((drawn, r) => {
      for (let b = 0; b < BANDS; b += 1) {
        const column = bands[r]?.[b];
        if (column) column[draw] = (drawn.R[b] ?? 0) + (middle[r]?.R[b] ?? 0) - (curveLean[r]?.[b] ?? 0);
      }
      for (const key of FIGURES) {
        const column = figures[r]?.[key];
        if (column) column[draw] = figureIn(key, drawn) + (offset[r]?.[key] ?? 0);
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
