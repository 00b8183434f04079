import type { TableContent } from '../actions/csvFile.ts';
import { valueIn, type ChartSeries } from './chartCurves.ts';

/** A chart's curves as a table: one row a band, for each curve its value, its likely error and why it is extrapolated. */
export const curveTableContent = (series: readonly ChartSeries[]): TableContent => {
  const bands = [...new Set(series.flatMap((one) => one.bands))].sort((a, b) => a - b);
  return {
    headings: [
      'band_Hz',
      ...series.flatMap((one) => [
        `${one.label}, dB`,
        ...(one.spread ? [`${one.label}, likely error, dB`] : []),
        ...(one.extrapolated ? [`${one.label}, extrapolated because`] : []),
      ]),
    ],
    rows: bands.map((band) => [
      band,
      ...series.flatMap((one) => {
        const at = one.bands.indexOf(band);
        const value = valueIn(one, band);
        return [
          value === null ? null : Number(value.toFixed(1)),
          ...(one.spread ? [Number((one.spread[at] ?? 0).toFixed(1))] : []),
          ...(one.extrapolated ? [one.extrapolated[at] ?? null] : []),
        ];
      }),
    ]),
  };
};
