import type { SampledResult } from '../../../src/engine/uncertainty/index.ts';
import { rangeOf } from '../../text/intervalWords.ts';
import type { FigureRow } from '../makeUp/comparison.ts';
import { EMPTY } from '../makeUp/figureCells.ts';

/** The rows of the comparison with, under Rw and the bass figure, where 90 of 100 builds end up. */
export const withIntervals = (
  rows: readonly FigureRow[],
  drawn: readonly (SampledResult | null)[],
): readonly FigureRow[] =>
  rows.flatMap((row) => {
    const key = row.figure === 'bass' ? 'bass' : row.figure === 'Rw' && row.label.startsWith('Rw') ? 'Rw' : null;
    if (key === null) return [row];
    const interval: FigureRow = {
      label: `90 of 100, ${key}`,
      unit: 'dB',
      meaning: 'Where 90 of 100 builds that might come of these drawings end up',
      figure: null,
      cells: drawn.map((one) => (one ? { ...EMPTY, text: rangeOf(key, one.figures[key]) } : EMPTY)),
    };
    return [row, interval];
  });
