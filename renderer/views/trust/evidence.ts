import record from '../../../assets/accuracy/record.json' with { type: 'json' };
import type { BandError } from '../../drawings/errorBands.ts';
import type { Compared } from '../../drawings/scatter.ts';

/** One figure of one measured construction beside the predicted one; band in Hz, null for a rating. */
export interface Comparison extends Compared {
  readonly kind: string;
  readonly band: number | null;
}

const comparisonOf = (row: readonly (number | string | null)[]): Comparison => {
  const [kind, , band, measured, predicted] = row;
  if (typeof measured !== 'number' || typeof predicted !== 'number') throw new Error('a row of the record is damaged');
  return {
    kind: record.classes[Number(kind)] ?? 'other',
    band: typeof band === 'number' ? band : null,
    measured,
    predicted,
  };
};

/** Everything the predictions were compared with, in the order of its sources. */
export const comparisons: readonly Comparison[] = record.rows.map(comparisonOf);
export const constructions: number = record.constructions;
export const features: readonly { readonly name: string; readonly cases: number }[] = record.features;
export const trends: readonly {
  readonly change: string;
  readonly pairs: number;
  readonly published: number;
  readonly predicted: number;
}[] = record.trends;

/** The second method on the same constructions. */
export const second: readonly {
  readonly of: string;
  readonly figures: string;
  readonly count: number;
  readonly bias: number;
  readonly deviation: number;
}[] = record.second;

/** Octaves whose errors count in the totals, Hz. */
export const COUNTED: readonly number[] = [125, 250, 500, 1000, 2000, 4000];
export const OCTAVES: readonly number[] = [63, ...COUNTED, 8000];

export const isRating = ({ band }: Comparison): boolean => band === null;
export const isCounted = ({ band }: Comparison): boolean => band !== null && COUNTED.includes(band);

/** Predicted less measured, dB. */
export const errorsOf = (list: readonly Comparison[]): readonly number[] =>
  list.map(({ measured, predicted }) => predicted - measured);

export interface Summary {
  readonly count: number;
  /** mean error, dB */
  readonly bias: number;
  /** standard deviation about it, dB; null for a single figure */
  readonly deviation: number | null;
  /** 0 to 1 */
  readonly within3: number;
  /** the error of largest size, dB */
  readonly worst: number;
}

/** Figures of a list of errors; null for none. */
export const summary = (errors: readonly number[]): Summary | null => {
  const count = errors.length;
  if (count === 0) return null;
  const bias = errors.reduce((sum, error) => sum + error, 0) / count;
  const square = errors.reduce((sum, error) => sum + (error - bias) ** 2, 0);
  return {
    count,
    bias,
    deviation: count > 1 ? Math.sqrt(square / (count - 1)) : null,
    within3: errors.filter((error) => Math.abs(error) <= 3).length / count,
    worst: errors.reduce((most, error) => (Math.abs(error) > Math.abs(most) ? error : most), 0),
  };
};

export interface ClassRow {
  readonly kind: string;
  readonly ratings: Summary | null;
  readonly bands: Summary | null;
}

const rowOf = (kind: string, list: readonly Comparison[]): ClassRow => ({
  kind,
  ratings: summary(errorsOf(list.filter(isRating))),
  bands: summary(errorsOf(list.filter(isCounted))),
});

/** All, then every class that the program tells apart, whether there is evidence or not. */
export const classRows: readonly ClassRow[] = [
  rowOf('all', comparisons),
  ...record.classes.map((kind) =>
    rowOf(
      kind,
      comparisons.filter((it) => it.kind === kind),
    ),
  ),
];

/** Mean error and spread octave by octave. */
export const bandErrors = (list: readonly Comparison[]): readonly BandError[] =>
  OCTAVES.map((band) => {
    const found = summary(errorsOf(list.filter((it) => it.band === band)));
    return { band, count: found?.count ?? 0, bias: found?.bias ?? 0, deviation: found?.deviation ?? 0 };
  });

/** Fewer figures than this say nothing of a class by itself. */
export const ENOUGH = 6;
