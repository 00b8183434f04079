import type { ErrorEntry } from './errorRecord.ts';
import { measuredCases } from './measuredCases.ts';
import type { MeasuredCase } from './measuredCases.ts';
import { TRENDS, trendPairs } from './trends.ts';

/** What a change of one thing buys, as published and as predicted: means over its pairs, dB. */
export interface TrendStep {
  readonly change: string;
  readonly pairs: number;
  readonly published: number;
  readonly predicted: number;
}

const ratingOf = (it: MeasuredCase): number => it.measured.STC ?? it.measured.Rw ?? NaN;

/** Published and predicted steps of every trend that has pairs. */
export const trendRecord = (record: readonly ErrorEntry[]): readonly TrendStep[] => {
  const errors = new Map(record.filter((it) => it.band === null).map((it) => [it.id, it.error]));
  const pairs = trendPairs(measuredCases());
  return TRENDS.flatMap(({ change }) => {
    const own = pairs.filter((pair) => pair.change === change);
    if (own.length === 0) return [];
    const mean = (step: (pair: (typeof own)[number]) => number): number =>
      own.reduce((sum, pair) => sum + step(pair), 0) / own.length;
    const published = mean((pair) => ratingOf(pair.after) - ratingOf(pair.before));
    const shift = mean((pair) => (errors.get(pair.after.id) ?? NaN) - (errors.get(pair.before.id) ?? NaN));
    return [{ change, pairs: own.length, published, predicted: published + shift }];
  });
};

/** A gain is predicted as a gain, a loss as a loss. */
export const rightSign = (step: TrendStep): boolean => step.predicted * step.published > 0;

/** Within half to one and a half times the published step. */
export const rightSize = (step: TrendStep): boolean =>
  step.predicted / step.published >= 0.5 && step.predicted / step.published <= 1.5;
