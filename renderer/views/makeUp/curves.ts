import type { Guides } from '../../../src/worker/protocol.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';
import type { SampledResult } from '../../../src/engine/uncertainty/index.ts';
import type { ChartSeries } from '../../drawings/chartCurves.ts';
import type { ChartGuide } from '../../drawings/chartGuide.ts';

export interface Column {
  readonly letter: string;
  readonly name: string;
  readonly prediction: Prediction | null;
  /** builds drawn of it, where there are any */
  readonly drawn?: SampledResult | null;
}

export const MARKS = 'f0, fc';

/** Curves of the columns that have been predicted; a missing one leaves its place, so that colours stay. */
export const seriesOf = (columns: readonly Column[]): readonly ChartSeries[] =>
  columns.map(({ letter, name, prediction, drawn }) => ({
    label: `${letter} ${name}`,
    short: letter,
    bands: prediction?.bands ?? [],
    values: prediction?.R ?? [],
    ...(prediction ? { spread: prediction.spread, extrapolated: prediction.extrapolated } : {}),
    ...(prediction && drawn ? { intervals: drawn.R } : {}),
  }));

/** Frequencies within 5 % of the one before would print over each other: the first stands for them. */
const apart = (frequencies: readonly number[]): readonly number[] =>
  frequencies.toSorted((a, b) => a - b).filter((frequency, i, all) => i === 0 || frequency > (all[i - 1] ?? 0) * 1.05);

const marksOf = ({ letter, prediction }: Column, series: number): readonly ChartGuide[] => {
  const mark =
    (sign: string, what: string) =>
    (frequency: number): ChartGuide => ({
      kind: 'mark',
      group: MARKS,
      label: sign,
      what: `${letter}: ${what}`,
      frequency,
      series,
    });
  return prediction
    ? [
        ...prediction.resonances.map(mark('f0', 'mass-air-mass resonance')),
        ...apart(prediction.criticalFrequencies).map(mark('fc', 'coincidence')),
      ]
    : [];
};

/** What may be laid over the curves: marks of all columns; mass law and rating contours of the one being edited. */
export const guidesOf = (columns: readonly Column[], guides: Guides | null, letter: string): readonly ChartGuide[] => {
  const curve = (group: string, spectrum: Guides['massLaw'] | null): readonly ChartGuide[] =>
    spectrum ? [{ kind: 'curve', group, label: `${group} ${letter}`, short: group, ...spectrum }] : [];
  return [
    ...columns.flatMap(marksOf),
    ...curve('mass law', guides?.massLaw ?? null),
    ...curve('Rw contour', guides?.contourRw ?? null),
    ...curve('STC contour', guides?.contourSTC ?? null),
  ];
};
