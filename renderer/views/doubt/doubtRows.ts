import type { Doubt } from '../../../src/engine/uncertainty/index.ts';
import { doubtAdvice, doubtName } from '../../../src/project/doubtWords.ts';

/** What a doubt is told of: a figure, or one third octave by its place among the bands. */
export type DoubtOf = keyof Doubt['figures'] | number;

export interface DoubtRow {
  readonly name: string;
  /** one standard deviation either side, dB */
  readonly decibels: number;
  /** share of the squared spread, 0 to 1 */
  readonly share: number;
  readonly advice: string;
}

const MOST = 6;

/** Less than this is not told, dB. */
const LEAST = 0.1;

const effect = (doubt: Doubt, of: DoubtOf): number => (typeof of === 'number' ? (doubt.R[of] ?? 0) : doubt.figures[of]);

/** The largest sources of doubt about one figure, and how many smaller ones are left out. */
export const doubtRows = (
  doubts: readonly Doubt[],
  of: DoubtOf,
): { readonly rows: readonly DoubtRow[]; readonly others: number; readonly together: number } => {
  const sorted = doubts.toSorted((a, b) => effect(b, of) - effect(a, of));
  const square = sorted.reduce((sum, doubt) => sum + effect(doubt, of) ** 2, 0);
  const told = sorted.filter((doubt) => effect(doubt, of) >= LEAST).slice(0, MOST);
  return {
    rows: told.map((doubt) => ({
      name: doubtName(doubt),
      decibels: effect(doubt, of),
      share: square > 0 ? effect(doubt, of) ** 2 / square : 0,
      advice: doubtAdvice(doubt),
    })),
    others: sorted.length - told.length,
    together: Math.sqrt(square),
  };
};
