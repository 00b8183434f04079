import { THIRD_OCTAVES } from '../quantities/index.ts';
import { figureIn } from './drawnCurves.ts';
import type { Curves, DrawnCurves } from './drawnCurves.ts';
import type { Ensemble } from './ensemble.ts';
import { FIGURES } from './figures.ts';
import type { FigureKey } from './figures.ts';

const BANDS = THIRD_OCTAVES.length;

/** Mirrored draws by which the lean is found. */
const MIRRORED = 150;

/** Each draw of the families' errors and its mirror image, inputs at their middle. */
export const mirrored = (ensemble: Ensemble, columns: readonly Float64Array[]): Float64Array[] =>
  columns.map((column, i) =>
    Float64Array.from({ length: 2 * MIRRORED }, (_, draw) => {
      const z = i < ensemble.inputs.length ? 0 : (column[Math.floor(draw / 2) % column.length] ?? 0);
      return draw % 2 === 0 ? z : -z;
    }),
  );

/** One value for each figure. */
export const eachFigure = <T>(of: (key: FigureKey) => T): Record<FigureKey, T> => ({
  Rw: of('Rw'),
  Rw_plus_C50_5000: of('Rw_plus_C50_5000'),
  STC: of('STC'),
  bass: of('bass'),
});

/** By how much a result's draws are lifted: figures, and bands of its curve, dB. */
export interface Lift {
  readonly figures: Readonly<Record<FigureKey, number>>;
  readonly R: Float64Array;
}

/**
 * The mean by which errors of single bands and parts pull results down, since dips count more than peaks.
 * @param middle results without any error
 * @param pilot results under mirrored errors alone
 * @returns lift for each result that puts the mean of its draws on the middle
 * @source antithetic draws: Hammersley and Morton, Proc. Camb. Phil. Soc. 52 (1956) 449-475; that ratings show no lean: tests/reference/tl
 */
export const liftsOf = (middle: readonly DrawnCurves[], pilot: Curves): readonly Lift[] => {
  const figures = middle.map(() => eachFigure(() => 0));
  const curves = middle.map(() => new Float64Array(BANDS));
  for (let draw = 0; draw < 2 * MIRRORED; draw += 1)
    pilot(draw).forEach((drawn, r) => {
      const sums = curves[r];
      for (let b = 0; sums && b < BANDS; b += 1) sums[b] = (sums[b] ?? 0) + (drawn.R[b] ?? 0) / (2 * MIRRORED);
      const sum = figures[r];
      if (sum) for (const key of FIGURES) sum[key] += figureIn(key, drawn) / (2 * MIRRORED);
    });
  return middle.map((centre, r) => ({
    figures: eachFigure((key) => figureIn(key, centre) - (figures[r]?.[key] ?? 0)),
    R: Float64Array.from(THIRD_OCTAVES, (_, b) => (centre.R[b] ?? 0) - (curves[r]?.[b] ?? 0)),
  }));
};
