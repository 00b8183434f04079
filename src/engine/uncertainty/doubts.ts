import { THIRD_OCTAVES } from '../quantities/index.ts';
import { ERROR_COLUMNS } from './familyError.ts';
import { figureOf } from './figures.ts';
import type { FigureKey } from './figures.ts';
import type { Ensemble } from './ensemble.ts';
import { columnCount } from './ensemble.ts';
import type { InputKind } from './input.ts';

/** Figures whose doubt is told apart; STC follows Rw closely. */
export type DoubtFigure = Exclude<FigureKey, 'STC'>;

const DOUBT_FIGURES: readonly DoubtFigure[] = ['Rw', 'Rw_plus_C50_5000', 'bass'];

/** One source of doubt: by how much it moves a result, one standard deviation either side, dB. */
export interface Doubt {
  readonly kind: InputKind;
  readonly of: string;
  readonly figures: Readonly<Record<DoubtFigure, number>>;
  readonly R: readonly number[];
}

/** A result's curve in one draw, and the curve that its Rw goes by. */
interface MovedCurve {
  readonly R: readonly number[];
  readonly rated: readonly number[];
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
export const doubtsOf = (groups: readonly DoubtGroup[], curves: readonly MovedCurve[]): readonly Doubt[] => {
  const figures = curves.map(({ R, rated }) => ({
    Rw: figureOf('Rw', rated),
    Rw_plus_C50_5000: figureOf('Rw_plus_C50_5000', R),
    bass: figureOf('bass', R),
  }));
  const together = (columns: readonly number[], value: (draw: number) => number): number =>
    Math.hypot(...columns.map((column) => halves(column, value)));
  const all = groups.map(({ kind, of, columns }): Doubt => {
    const figure = (key: DoubtFigure): number => together(columns, (draw) => figures[draw]?.[key] ?? 0);
    return {
      kind,
      of,
      figures: {
        Rw: figure('Rw'),
        Rw_plus_C50_5000: figure('Rw_plus_C50_5000'),
        bass: figure('bass'),
      },
      R: THIRD_OCTAVES.map((_, b) => together(columns, (draw) => curves[draw]?.R[b] ?? 0)),
    };
  });
  return all
    .filter((doubt) => DOUBT_FIGURES.some((key) => doubt.figures[key] >= 0.05) || doubt.R.some((dB) => dB >= 0.3))
    .sort((a, b) => b.figures.Rw - a.figures.Rw);
};
