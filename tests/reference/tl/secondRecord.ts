import { structureOf } from '../../../src/engine/assembly/index.ts';
import { rateThirdOctaves } from '../../../src/engine/ratings/index.ts';
import { CONSTRUCTION_CLASSES, constructionClass, secondMethod } from '../../../src/engine/transmission/index.ts';
import { COUNTED, statistics } from './errorRecord.ts';
import { assemblyOf, type MeasuredCase } from './measuredCases.ts';

/** How far the second method lies from measurement, dB. */
export interface SecondRow {
  /** "one leaf", "two leaves", or a class of construction */
  readonly of: string;
  readonly figures: 'ratings' | 'octave bands';
  readonly count: number;
  readonly bias: number;
  readonly deviation: number;
}

interface SecondError {
  readonly leaves: 'one leaf' | 'two leaves';
  readonly kind: string;
  readonly figures: SecondRow['figures'];
  readonly error: number;
}

const errorsOf = (it: MeasuredCase): readonly SecondError[] => {
  const assembly = assemblyOf(it);
  const method = secondMethod(assembly);
  if (!method) return [];
  const structure = structureOf(assembly);
  const leaves = structure.leaves.length === 1 ? 'one leaf' : 'two leaves';
  const kind = constructionClass(structure);
  const { bands_Hz, R_dB, STC, Rw } = it.measured;
  if (bands_Hz)
    return bands_Hz.flatMap((band, i) => {
      if (!COUNTED.includes(band)) return [];
      const middle = method.bands.indexOf(band);
      const tau = [middle - 1, middle, middle + 1].map((b) => 10 ** (-(method.R[b] ?? NaN) / 10));
      const R = -10 * Math.log10(tau.reduce((sum, t) => sum + t, 0) / 3);
      return [{ leaves, kind, figures: 'octave bands', error: R - (R_dB?.[i] ?? NaN) }];
    });
  const ratings = rateThirdOctaves({ bands: method.bands, values: method.R });
  const error = STC === undefined ? (ratings.Rw ?? NaN) - (Rw ?? NaN) : (ratings.STC ?? NaN) - STC;
  return [{ leaves, kind, figures: 'ratings', error }];
};

const round = (value: number): number => Math.round(value * 10) / 10;

const rowsOf = (of: string, errors: readonly SecondError[]): readonly SecondRow[] =>
  (['ratings', 'octave bands'] as const).flatMap((figures) => {
    const own = errors.filter((it) => it.figures === figures).map(({ error }) => error);
    if (own.length === 0) return [];
    const { count, bias, deviation } = statistics(own);
    return [{ of, figures, count, bias: round(bias), deviation: round(deviation) }];
  });

/** The second method on the measured constructions, to which nothing of it was fitted: by leaves, then by class. */
export const secondRecord = (cases: readonly MeasuredCase[]): readonly SecondRow[] => {
  const errors = cases.flatMap(errorsOf);
  return [
    ...(['one leaf', 'two leaves'] as const).flatMap((of) =>
      rowsOf(
        of,
        errors.filter(({ leaves }) => leaves === of),
      ),
    ),
    ...CONSTRUCTION_CLASSES.flatMap((of) =>
      rowsOf(
        of,
        errors.filter(({ kind }) => kind === of),
      ),
    ),
  ];
};
