import { THIRD_OCTAVES } from '../quantities/index.ts';
import { reductionOf } from '../shell/index.ts';
import type { Ensemble } from './ensemble.ts';
import { createDrawer } from './ensemble.ts';
import { figureOf } from './figures.ts';
import type { FigureKey } from './figures.ts';

const BANDS = THIRD_OCTAVES.length;

/** R of one result in one draw, from the parts' S·τ. */
export interface Result {
  readonly parts: readonly number[];
  readonly area: number;
}

/** A result's curve in one draw, and the curve that its Rw and STC go by. */
export interface DrawnCurves {
  readonly R: readonly number[];
  readonly rated: readonly number[];
}

export type Curves = (draw: number) => readonly DrawnCurves[];

/** The curve that a figure is rated from. */
export const figureIn = (key: FigureKey, { R, rated }: DrawnCurves): number =>
  figureOf(key, key === 'Rw' || key === 'STC' ? rated : R);

/** Curves of every result for a set of columns. */
export const curvesOf = (
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
