import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';
import { figureOf } from '../../../src/engine/uncertainty/index.ts';
import type { FigureKey } from '../../../src/engine/uncertainty/index.ts';
import { octaveReduction } from '../tl/errorRecord.ts';
import type { MeasuredCase } from '../tl/measuredCases.ts';

/** One measured figure beside its prediction. */
export interface MeasuredFigure {
  readonly band: number | null;
  readonly rating: FigureKey | null;
  readonly measured: number;
  readonly predicted: number;
  /** third octaves that it is made of, by index */
  readonly thirds: readonly number[];
  /** R as predicted */
  readonly R: readonly number[];
  /** half a step of the figure as published, dB */
  readonly rounding: number;
}

const thirdsOf = (band: number, width: 'octave' | 'third'): readonly number[] => {
  const middle = THIRD_OCTAVES.indexOf(band);
  return width === 'third' ? [middle] : [middle - 1, middle, middle + 1];
};

/** The figures of a case: its bands, or its rating where it has no curve. */
export const measuredFigures = (it: MeasuredCase, prediction: Prediction): readonly MeasuredFigure[] => {
  const { measured } = it;
  const { R } = prediction;
  const bands = (measured.bands_Hz ?? []).map((band, i): MeasuredFigure => {
    const thirds = thirdsOf(band, measured.bands ?? 'octave');
    const predicted = measured.bands === 'third' ? (R[thirds[0] ?? 0] ?? NaN) : octaveReduction(prediction, band);
    return { band, rating: null, measured: measured.R_dB?.[i] ?? NaN, predicted, thirds, R, rounding: 0 };
  });
  if (bands.length > 0) return bands;
  const rating: FigureKey = measured.STC === undefined ? 'Rw' : 'STC';
  // whole decibels are cut, not rounded: the exact value lies half a decibel higher on average
  const value = (measured.STC ?? measured.Rw ?? NaN) + 0.5;
  return [{ band: null, rating, measured: value, predicted: figureOf(rating, R), thirds: [], R, rounding: 0.5 }];
};
