import { THIRD_OCTAVES } from '../quantities/index.ts';
import { figureIn } from './drawnCurves.ts';
import type { DrawnCurves } from './drawnCurves.ts';
import { ERROR_COLUMNS } from './familyError.ts';
import { FIGURES } from './figures.ts';
import type { FigureKey } from './figures.ts';
import type { Ensemble } from './ensemble.ts';
import { columnCount } from './ensemble.ts';
import type { InputKind } from './input.ts';
import { eachFigure } from './lean.ts';

/** One source of doubt: by how much it moves a result, one standard deviation either side, dB. */
export interface Doubt {
  readonly kind: InputKind;
  readonly of: string;
  readonly figures: Readonly<Record<FigureKey, number>>;
  readonly R: readonly number[];
}

/** A source of doubt with the columns that belong to it. */
export interface DoubtGroup {
  readonly kind: InputKind;
  readonly of: string;
  readonly columns: readonly number[];
}

/** Every source of doubt of an ensemble: each input by itself, each family's error as one. */
export const doubtGroups = ({ inputs, families }: Ensemble): readonly DoubtGroup[] => [
  ...inputs.map(({ kind, of }, i) => ({ kind, of, columns: [i] })),
  ...families.map(({ kind, of }, f) => ({
    kind,
    of,
    columns: Array.from({ length: ERROR_COLUMNS }, (_, i) => inputs.length + f * ERROR_COLUMNS + i),
  })),
];

/** Columns in which draws 2i and 2i + 1 move column i alone, one standard deviation up and down. */
export const oneAtATime = (ensemble: Ensemble): Float64Array[] => {
  const count = columnCount(ensemble);
  return Array.from({ length: count }, (_, i) => {
    const column = new Float64Array(2 * count);
    column[2 * i] = 1;
    column[2 * i + 1] = -1;
    return column;
  });
};

const halves = (column: number, value: (draw: number) => number): number =>
  (value(2 * column) - value(2 * column + 1)) / 2;

/**
 * What the doubt about a result comes from, one source at a time about the middle: σ_source² = Σ_columns ((y₊ − y₋)/2)².
 * @param groups sources with their columns
 * @param curves R of the result in the draws of oneAtATime, per draw
 * @returns doubts sorted by what they do to Rw, largest first; those that move nothing are left out
 * @validity sources independent; results close to linear within one standard deviation
 * @source ISO/IEC Guide 98-3:2008, 5.1.2 and 5.1.3 (combined standard uncertainty from one-at-a-time changes)
 * @example doubtsOf(groups, curves)[0]?.figures.Rw
 */
export const doubtsOf = (groups: readonly DoubtGroup[], curves: readonly DrawnCurves[]): readonly Doubt[] => {
  const figures = curves.map((drawn) => eachFigure((key) => figureIn(key, drawn)));
  const together = (columns: readonly number[], value: (draw: number) => number): number =>
    Math.hypot(...columns.map((column) => halves(column, value)));
  const all = groups.map(({ kind, of, columns }): Doubt => {
    return {
      kind,
      of,
      figures: eachFigure((key) => together(columns, (draw) => figures[draw]?.[key] ?? 0)),
      R: THIRD_OCTAVES.map((_, b) => together(columns, (draw) => curves[draw]?.R[b] ?? 0)),
    };
  });
  return all
    .filter((doubt) => FIGURES.some((key) => doubt.figures[key] >= 0.05) || doubt.R.some((dB) => dB >= 0.3))
    .sort((a, b) => b.figures.Rw - a.figures.Rw);
};
