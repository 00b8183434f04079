import type { Prediction, Predictor, Resolution } from '../../../src/engine/transmission/index.ts';
import { assemblyOf, measuredCases } from './measuredCases.ts';
import type { MeasuredCase } from './measuredCases.ts';

/** One predicted figure against one measured: error = predicted − measured, dB. */
export interface ErrorEntry {
  readonly id: string;
  readonly name: string;
  readonly group: Group;
  /** class of the case as sorted by its source */
  readonly class: string;
  /** class by which the program looks up the likely error */
  readonly constructionClass: string;
  /** octave band, Hz; null for a single-number rating */
  readonly band: number | null;
  readonly measured: number;
  readonly error: number;
}

export const GROUPS = [
  'framed walls',
  'floors',
  'masonry with lining',
  'masonry',
  'double glazing',
  'glass',
  'single boards',
] as const;
export type Group = (typeof GROUPS)[number];

/** Octaves that count in the totals, Hz; the others are printed. */
export const COUNTED = [125, 250, 500, 1000, 2000, 4000];

export const groupOf = (kind: string): Group => {
  if (kind.startsWith('stud wall')) return 'framed walls';
  if (kind.startsWith('floor')) return 'floors';
  if (kind.startsWith('masonry +')) return 'masonry with lining';
  if (kind.startsWith('masonry')) return 'masonry';
  if (kind.startsWith('double')) return 'double glazing';
  return kind.startsWith('glass') ? 'glass' : 'single boards';
};

/** R of an octave from the mean transmission of its three third octaves. */
export const octaveReduction = (prediction: Prediction, octave: number): number => {
  const middle = prediction.bands.indexOf(octave);
  const tau = [middle - 1, middle, middle + 1].map((i) => 10 ** (-(prediction.R[i] ?? NaN) / 10));
  return -10 * Math.log10(tau.reduce((sum, t) => sum + t, 0) / 3);
};

const errorsOf = (it: MeasuredCase, prediction: Prediction): ErrorEntry[] => {
  const { measured } = it;
  const entry = (band: number | null, predicted: number, figure: number): ErrorEntry => ({
    id: it.id,
    name: it.name,
    group: groupOf(it.class),
    class: it.class,
    constructionClass: prediction.constructionClass,
    band,
    measured: figure,
    error: predicted - figure,
  });
  const bands = (measured.bands_Hz ?? []).map((band, i) => {
    const R =
      measured.bands === 'third' ? prediction.R[prediction.bands.indexOf(band)] : octaveReduction(prediction, band);
    return entry(band, R ?? NaN, measured.R_dB?.[i] ?? NaN);
  });
  // a case with a curve is judged by the curve alone: its rating follows from it
  if (bands.length > 0) return bands;
  if (measured.STC !== undefined) return [entry(null, prediction.ratings.STC ?? NaN, measured.STC)];
  return [entry(null, prediction.ratings.Rw ?? NaN, measured.Rw ?? NaN)];
};

/** Every error of every case. A case that cannot be predicted throws: a missing sample fails. */
export const errorRecord = (predictor: Predictor, resolution: Resolution = 'full'): readonly ErrorEntry[] =>
  measuredCases().flatMap((it) => errorsOf(it, predictor.predict(assemblyOf(it), { resolution })));

export interface Statistics {
  readonly count: number;
  readonly bias: number;
  readonly deviation: number;
  readonly meanAbsolute: number;
  /** the error of largest size */
  readonly worst: number;
}

export const statistics = (errors: readonly number[]): Statistics => {
  const count = errors.length;
  const bias = errors.reduce((sum, e) => sum + e, 0) / count;
  const square = errors.reduce((sum, e) => sum + (e - bias) ** 2, 0);
  return {
    count,
    bias,
    deviation: Math.sqrt(square / Math.max(1, count - 1)),
    meanAbsolute: errors.reduce((sum, e) => sum + Math.abs(e), 0) / count,
    worst: errors.reduce((most, e) => (Math.abs(e) > Math.abs(most) ? e : most), 0),
  };
};

export const ratingErrors = (record: readonly ErrorEntry[], group?: Group): number[] =>
  record.filter((it) => it.band === null && (group === undefined || it.group === group)).map((it) => it.error);

export const bandErrors = (record: readonly ErrorEntry[], group?: Group, band?: number): number[] =>
  record
    .filter(
      (it) =>
        it.band !== null &&
        (band === undefined ? COUNTED.includes(it.band) : it.band === band) &&
        (group === undefined || it.group === group),
    )
    .map((it) => it.error);
