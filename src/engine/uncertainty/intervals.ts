import type { FigureKey } from './figures.ts';

/** Where 50 and 90 of 100 builds end up: percentiles 5, 25, 50, 75, 95. */
export interface Interval {
  readonly p5: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p95: number;
}

/** The same per band. */
export interface CurveIntervals {
  readonly p5: readonly number[];
  readonly p25: readonly number[];
  readonly p50: readonly number[];
  readonly p75: readonly number[];
  readonly p95: readonly number[];
}

/** How often each reported whole-decibel figure came out, ascending. */
export type Tally = readonly (readonly [figure: number, draws: number])[];

/**
 * Quantile of sorted values by linear interpolation between order statistics.
 * @param sorted ascending, at least one
 * @param share 0 to 1
 * @source Hyndman and Fan, The American Statistician 50 (1996) 361-365, definition 7
 * @example quantile(Float64Array.of(1, 2, 3), 0.5) // 2
 */
export const quantile = (sorted: Float64Array, share: number): number => {
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  const below = sorted[low] ?? 0;
  const above = sorted[Math.min(sorted.length - 1, low + 1)] ?? below;
  return below + (at - low) * (above - below);
};

/** Percentiles of draws. @param values in any order; sorted in place */
export const intervalOf = (values: Float64Array): Interval => {
  values.sort();
  const [p5, p25, p50, p75, p95] = [0.05, 0.25, 0.5, 0.75, 0.95].map((share) => quantile(values, share));
  return { p5: p5 ?? 0, p25: p25 ?? 0, p50: p50 ?? 0, p75: p75 ?? 0, p95: p95 ?? 0 };
};

/** Percentiles of every band. @param bands draws of each band; sorted in place */
export const curveIntervals = (bands: readonly Float64Array[]): CurveIntervals => {
  const all = bands.map(intervalOf);
  return {
    p5: all.map((it) => it.p5),
    p25: all.map((it) => it.p25),
    p50: all.map((it) => it.p50),
    p75: all.map((it) => it.p75),
    p95: all.map((it) => it.p95),
  };
};

/** What is wished for: a figure of the whole of at least so much. */
export interface Target {
  readonly figure: FigureKey;
  /** dB */
  readonly value: number;
}

/** Counts draws by reported figure. @param reported whole dB */
export const tallyOf = (reported: Iterable<number>): Tally => {
  const counts = new Map<number, number>();
  for (const figure of reported) counts.set(figure, (counts.get(figure) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => a - b);
};

/**
 * Chance of meeting a target: share of the draws whose reported figure is at least the target.
 * @param tally draws by reported figure
 * @param value target, dB
 * @returns 0 to 1; 0 without draws
 * @validity as good as the spreads that were drawn from; no chance is certain
 * @source ISO 12999-1:2020, clause 8 asks whether a requirement is met with regard to uncertainty; counted from draws
 * @example chanceOfTarget([[50, 3], [51, 1]], 51) // 0.25
 */
export const chanceOfTarget = (tally: Tally, value: number): number => {
  const all = tally.reduce((sum, [, draws]) => sum + draws, 0);
  const met = tally.reduce((sum, [figure, draws]) => sum + (figure >= value - 1e-9 ? draws : 0), 0);
  return all === 0 ? 0 : met / all;
};
