import type { TableContent } from '../../actions/csvFile.ts';
import { valueOn, type PlaneAxis, type PlaneSeries } from '../../drawings/airCharts.ts';

/** A figure of an air chart with the decimals of its axis; a dash where a curve has none. */
export const planeFigure = (value: number | null, { decimals }: PlaneAxis): string =>
  value === null ? '–' : value.toFixed(decimals).replace('-', '\u2212');

/** What the curves say at a place, in a line. */
export const planeReading = (series: readonly PlaneSeries[], x: PlaneAxis, y: PlaneAxis, at: number): string =>
  `${planeFigure(at, x)} ${x.unit}: ${series
    .map((one) => `${one.label} ${planeFigure(valueOn(one, at), y)} ${y.unit}`)
    .join(', ')}`;

/** Places along the horizontal axis from zero on. */
export const planeRows = (step: number, most: number): number[] =>
  Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, i) => Number((i * step).toPrecision(6)));

/** The curves as a file. */
export const planeTableContent = (
  series: readonly PlaneSeries[],
  x: PlaneAxis,
  y: PlaneAxis,
  rows: readonly number[],
): TableContent => ({
  headings: [`${x.label}, ${x.unit}`, ...series.map((one) => `${one.label}, ${y.unit}`)],
  rows: rows.map((at) => [
    at,
    ...series.map((one) => {
      const value = valueOn(one, at);
      return value === null ? null : Number(value.toFixed(y.decimals));
    }),
  ]),
});
