import { createPredictor } from '../../../src/engine/transmission/index.ts';
import { complete, createUncertainty, LABORATORY } from '../../../src/engine/uncertainty/index.ts';
import type {
  ErrorScale,
  ModelErrorRecord,
  SampledResult,
  Uncertainty,
} from '../../../src/engine/uncertainty/index.ts';
import { groupOf } from '../tl/errorRecord.ts';
import type { Group } from '../tl/errorRecord.ts';
import { assemblyOf, measuredCases } from '../tl/measuredCases.ts';
import type { MeasuredCase } from '../tl/measuredCases.ts';
import { errorScaleOf, errorScales } from './errorScales.ts';
import type { ScoredFigure } from './errorScales.ts';
import { measuredFigures } from './measuredFigures.ts';
import type { MeasuredFigure } from './measuredFigures.ts';

/** Whether the stated intervals held one measured figure that had no part in learning them. */
export interface Covered {
  readonly id: string;
  readonly group: Group;
  readonly constructionClass: string;
  readonly band: number | null;
  readonly in90: boolean;
  readonly in50: boolean;
  /** width of the 90 % interval, dB */
  readonly width: number;
}

const DRAWS = { score: 500, judge: 1000 };

/** One class with one error of the method. */
const recordOf = (kind: string, scale: ErrorScale): ModelErrorRecord => ({
  all: scale,
  classes: { [kind]: { ratings: 0, bands: 0, ...scale } },
});
const NONE: ErrorScale = { rating: 0, band: 0 };
const SOME: ErrorScale = { rating: 2, band: 4 };

interface Held {
  readonly it: MeasuredCase;
  readonly constructionClass: string;
  readonly figures: readonly MeasuredFigure[];
  readonly uncertainty: Uncertainty;
}

/** How far percentiles lie from the middle for a figure: of an octave, the mean of its three thirds. */
const reach = (sampled: SampledResult, figure: MeasuredFigure, percentile: 'p5' | 'p25' | 'p75' | 'p95'): number => {
  if (figure.rating) return sampled.figures[figure.rating][percentile] - figure.predicted;
  const away = figure.thirds.map((b) => (sampled.R[percentile][b] ?? 0) - (figure.R[b] ?? 0));
  return away.reduce((sum, dB) => sum + dB, 0) / away.length;
};

const sampled = ({ it, uncertainty }: Held, record: ModelErrorRecord, samples: number): SampledResult =>
  complete(uncertainty.assembly(assemblyOf(it), { samples, record, workmanship: LABORATORY }));

/**
 * The square of a reach grows with the square of the method's error: from the reach without and with some of it follows
 * how much it takes to reach the measured figure.
 */
const scored = (held: Held): ScoredFigure[] => {
  const without = sampled(held, recordOf(held.constructionClass, NONE), DRAWS.score);
  const some = sampled(held, recordOf(held.constructionClass, SOME), DRAWS.score);
  return held.figures.map((figure) => {
    const error = figure.measured - figure.predicted;
    const wanted = Math.max(0, Math.abs(error) - figure.rounding);
    const side = error > 0 ? 'p95' : 'p5';
    const [least, more] = [reach(without, figure, side), reach(some, figure, side)];
    const scale = figure.rating ? SOME.rating : SOME.band;
    const gain = Math.max(0.1, (more ** 2 - least ** 2) / scale ** 2);
    return {
      id: held.it.id,
      constructionClass: held.constructionClass,
      band: figure.band,
      score: (wanted ** 2 - least ** 2) / gain,
    };
  });
};

/** Every case with its prediction, ready to be drawn. */
const holdCases = (): readonly Held[] =>
  measuredCases().map((it) => {
    const predictor = createPredictor();
    const prediction = predictor.predict(assemblyOf(it), { resolution: 'full' });
    const uncertainty = createUncertainty((assembly, size, resolution) =>
      predictor.predict(assembly, { resolution, size: [size.width, size.height] }),
    );
    const figures = measuredFigures(it, prediction);
    return { it, constructionClass: prediction.constructionClass, figures, uncertainty };
  });

export interface Coverage {
  /** learned from all cases: what the program uses */
  readonly record: ModelErrorRecord;
  /** judged for each case by what was learned from all others */
  readonly covered: readonly Covered[];
}

/** Learns the method's error from the measured cases and judges the intervals, each case by what the others teach. */
export const coverage = (): Coverage => {
  const cases = holdCases();
  const figures = cases.flatMap(scored);
  const covered = cases.flatMap((held) => {
    const others = figures.filter(({ id }) => id !== held.it.id);
    const learned = errorScaleOf(others)(held.constructionClass);
    const result = sampled(held, recordOf(held.constructionClass, learned), DRAWS.judge);
    return held.figures.map((figure): Covered => {
      const error = figure.measured - figure.predicted;
      const within = (low: 'p5' | 'p25', high: 'p75' | 'p95'): boolean =>
        error >= reach(result, figure, low) - figure.rounding && error <= reach(result, figure, high) + figure.rounding;
      return {
        id: held.it.id,
        group: groupOf(held.it.class),
        constructionClass: held.constructionClass,
        band: figure.band,
        in90: within('p5', 'p95'),
        in50: within('p25', 'p75'),
        width: reach(result, figure, 'p95') - reach(result, figure, 'p5'),
      };
    });
  });
  return { record: errorScales(figures), covered };
};
