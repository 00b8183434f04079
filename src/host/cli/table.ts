/** A heading and the cells of its column, top to bottom. */
export interface Column {
  readonly heading: string;
  readonly cells: readonly string[];
}

/** Columns side by side: the first to the left, figures to the right; broken into blocks that fit the width. */
export const showTable = ([first, ...others]: readonly Column[], width = 100): string => {
  if (!first) return '';
  const widthOf = ({ heading, cells }: Column): number => Math.max(heading.length, ...cells.map((cell) => cell.length));
  const blocks: Column[][] = [[]];
  let used = widthOf(first);
  for (const column of others) {
    if (used + 2 + widthOf(column) > width && blocks.at(-1)?.length) {
      blocks.push([]);
      used = widthOf(first);
    }
    blocks.at(-1)?.push(column);
    used += 2 + widthOf(column);
  }
  const show = (columns: readonly Column[]): string => {
    const line = (label: string, cell: (column: Column) => string): string =>
      [label.padEnd(widthOf(first)), ...columns.map((column) => cell(column).padStart(widthOf(column)))]
        .join('  ')
        .trimEnd();
    return [
      line(first.heading, (column) => column.heading),
      ...first.cells.map((label, i) => line(label, (column) => column.cells[i] ?? '')),
    ].join('\n');
  };
  return blocks.map(show).join('\n\n');
};

const MINUS = '\u2212';

/** A figure with fixed decimals and a true minus sign; a dash where there is none. */
export const showFigure = (value: number | null | undefined, decimals = 0): string =>
  value === null || value === undefined
    ? '–'
    : value
        .toFixed(decimals)
        .replace(/^-(?=.*[1-9])/, MINUS)
        .replace(/^-/, '');
