import type { TableContent } from '../../actions/csvFile.ts';
import type { FigureRow } from './comparison.ts';

/** "−1" and "≈ 48" as numbers; anything else stays the text it is. */
const numberOrText = (text: string): number | string | null => {
  if (text === '–') return null;
  const plain = text.replace('≈', '').replace('\u2212', '-').trim();
  return /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : text;
};

/** The comparison as a table: a row for each figure, a column for each make-up. */
export const comparisonTableContent = (names: readonly string[], rows: readonly FigureRow[]): TableContent => ({
  headings: ['figure', 'unit', ...names],
  rows: rows.map(({ label, unit, cells }) => [
    label,
    unit,
    ...names.map((_, index) => numberOrText(cells[index]?.text ?? '–')),
  ]),
});
