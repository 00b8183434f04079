import { COUNTED, statistics } from './errorRecord.ts';
import type { ErrorEntry } from './errorRecord.ts';

const rootMeanSquare = (errors: readonly number[]): number =>
  Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);

const round = (value: number): number => Math.round(value * 10) / 10;

/** Fewer samples than this are pooled with all others. */
const ENOUGH = 6;

/** The octave of 50, 63 and 80 Hz, in which bass is told. */
const LOW = 63;

/** Bias and spread of a class's figures in the lowest octave; null where there are none. */
const lowOf = (errors: readonly number[]): string => {
  if (errors.length === 0) return 'null';
  const { count, bias, deviation } = statistics(errors);
  return `[${count}, ${round(bias)}, ${round(deviation)}]`;
};

/** Root mean square error by construction class, as a source file of the engine. */
export const accuracySource = (record: readonly ErrorEntry[]): string => {
  const kinds = [...new Set(record.map((it) => it.constructionClass))].sort();
  const ratings = record.filter((it) => it.band === null);
  const bands = record.filter((it) => it.band !== null && COUNTED.includes(it.band));
  const lines = kinds.map((kind) => {
    const rating = ratings.filter((it) => it.constructionClass === kind).map((it) => it.error);
    const band = bands.filter((it) => it.constructionClass === kind).map((it) => it.error);
    const ratingError = rating.length >= ENOUGH ? round(rootMeanSquare(rating)) : null;
    const bandError = band.length >= ENOUGH ? round(rootMeanSquare(band)) : null;
    const low = lowOf(record.filter((it) => it.constructionClass === kind && it.band === LOW).map((it) => it.error));
    const key = /^[a-z]+$/.test(kind) ? kind : `'${kind}'`;
    return `  ${key}: { ratings: ${rating.length}, ratingError: ${ratingError}, bands: ${band.length}, bandError: ${bandError}, low: ${low} },`;
  });
  const all = {
    rating: round(rootMeanSquare(ratings.map((it) => it.error))),
    band: round(rootMeanSquare(bands.map((it) => it.error))),
  };
  return `/**
 * Root mean square error of the predictions against measured constructions, by construction class, dB: octave bands
 * 125 Hz to 4 kHz and single-number ratings; null where fewer than ${ENOUGH} samples were at hand.
 * Made by \`npm run validate -- --record\` from the ${statistics(ratings.map((it) => it.error)).count} ratings and ${bands.length} octave bands in tests/reference/tl; not edited by hand.
 * The constants of the model were chosen on the same constructions, so strangers will fare somewhat worse.
 */
export interface ClassRecord {
  readonly ratings: number;
  readonly ratingError: number | null;
  readonly bands: number;
  readonly bandError: number | null;
  /** predicted less measured in the octave of ${LOW} Hz: how many, mean and spread in dB; null where nothing of the class was measured there */
  readonly low: readonly [count: number, bias: number, deviation: number] | null;
}

export const ALL_CLASSES = { ratingError: ${all.rating}, bandError: ${all.band} };

export const ACCURACY_RECORD: Readonly<Record<string, ClassRecord>> = {
${lines.join('\n')}
};
`;
};
