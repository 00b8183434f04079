import { createPredictor } from '../../src/engine/transmission/index.ts';
import {
  bandErrors,
  errorRecord,
  GROUPS,
  ratingErrors,
  statistics,
  type ErrorEntry,
  type Group,
} from '../reference/tl/errorRecord.ts';
import { markdownTable } from './markdownTable.ts';

const signed = (value: number, decimals: number): string =>
  `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(decimals)}`;

const within = (errors: readonly number[], most: number): string =>
  `${Math.round((100 * errors.filter((error) => Math.abs(error) <= most).length) / errors.length)} %`;

const figures = (errors: readonly number[]): string[] => {
  if (errors.length === 0) return ['–', '–', '–', '–'];
  const { count, deviation, worst } = statistics(errors);
  return [String(count), count > 1 ? deviation.toFixed(1) : '–', within(errors, 3), signed(worst, 0)];
};

const row = (record: readonly ErrorEntry[], name: string, group?: Group): string[] => [
  name,
  ...figures(ratingErrors(record, group)),
  ...figures(bandErrors(record, group)),
];

/** How far predictions lie from measured constructions, by kind, as a table for the README. */
export const accuracyTable = (): string => {
  const record = errorRecord(createPredictor());
  return markdownTable([
    ['', 'ratings', 'spread, dB', 'within 3 dB', 'worst, dB', 'octaves', 'spread, dB', 'within 3 dB', 'worst, dB'],
    row(record, 'all'),
    ...GROUPS.map((group) => row(record, group, group)),
  ]);
};
