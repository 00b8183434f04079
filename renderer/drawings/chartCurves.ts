import { area, line } from 'd3-shape';
import type { CurveIntervals } from '../../src/engine/uncertainty/index.ts';
import type { ChartFrame } from './chart.ts';

/** One curve of a band chart. `extrapolated[i]` is null, or why the band is outside the model's validity. */
export interface ChartSeries {
  readonly label: string;
  /** what stands at the curve's end where the label is told elsewhere */
  readonly short?: string;
  readonly bands: readonly number[];
  readonly values: readonly number[];
  /** one standard deviation per band, dB */
  readonly spread?: readonly number[];
  readonly extrapolated?: readonly (string | null)[];
  /** percentiles of builds that might come of the drawings, dB per band: shown instead of the spread */
  readonly intervals?: CurveIntervals;
}

interface Point {
  readonly band: number;
  readonly value: number;
  readonly spread: number;
  readonly extrapolated: boolean;
}

const pointsOf = (series: ChartSeries, frame: ChartFrame): readonly Point[] =>
  series.bands.flatMap((band, i) => {
    const value = series.values[i];
    if (value === undefined || !Number.isFinite(value) || !frame.bands.includes(band)) return [];
    return [{ band, value, spread: series.spread?.[i] ?? 0, extrapolated: Boolean(series.extrapolated?.[i]) }];
  });

const inside = (frame: ChartFrame, level: number): number => Math.min(frame.most, Math.max(frame.least, level));

/** A run of a curve's points drawn alike: inside the model's validity, or beyond it. */
export interface CurveRun {
  readonly d: string;
  readonly extrapolated: boolean;
}

/** The curve as runs; a stretch that touches an extrapolated band belongs to the extrapolated run. */
export const curveRuns = (series: ChartSeries, frame: ChartFrame): readonly CurveRun[] => {
  const points = pointsOf(series, frame);
  const path = line<Point>(
    (point) => frame.x(point.band),
    (point) => frame.y(point.value),
  );
  const runs: { points: Point[]; extrapolated: boolean }[] = [];
  points.slice(1).forEach((point, i) => {
    const from = points[i];
    if (!from) return;
    const extrapolated = from.extrapolated || point.extrapolated;
    const run = runs.at(-1);
    if (run?.extrapolated === extrapolated) run.points.push(point);
    else runs.push({ points: [from, point], extrapolated });
  });
  return runs.map((run) => ({ d: path(run.points) ?? '', extrapolated: run.extrapolated }));
};

/** The band of one standard deviation either side, cut off at the chart's edge. */
export const spreadBand = (series: ChartSeries, frame: ChartFrame): string =>
  area<Point>(
    (point) => frame.x(point.band),
    (point) => frame.y(inside(frame, point.value - point.spread)),
    (point) => frame.y(inside(frame, point.value + point.spread)),
  )(pointsOf(series, frame)) ?? '';

/** The band between two percentiles, cut off at the chart's edge. */
export const intervalBand = (
  { bands }: ChartSeries,
  low: readonly number[],
  high: readonly number[],
  frame: ChartFrame,
): string =>
  area<number>(
    (i) => frame.x(bands[i] ?? 0),
    (i) => frame.y(inside(frame, low[i] ?? 0)),
    (i) => frame.y(inside(frame, high[i] ?? 0)),
  )(bands.flatMap((band, i) => (frame.bands.includes(band) ? [i] : []))) ?? '';

/** Value in a band, or null where the series has none. */
export const valueIn = (series: ChartSeries, band: number): number | null => {
  const value = series.values[series.bands.indexOf(band)];
  return value === undefined || !Number.isFinite(value) ? null : value;
};

/** Where the curve ends on the right. */
export const curveEnd = (series: ChartSeries, frame: ChartFrame): { readonly x: number; readonly y: number } | null => {
  const last = pointsOf(series, frame).at(-1);
  return last ? { x: frame.x(last.band), y: frame.y(last.value) } : null;
};
