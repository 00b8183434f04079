/** Rows as a table in Markdown, columns as wide as their widest cell; the first row is the head. */
export const markdownTable = ([head = [], ...body]: readonly (readonly string[])[]): string => {
  const widths = head.map((_, column) => Math.max(3, ...[head, ...body].map((row) => row[column]?.length ?? 0)));
  const line = (cells: readonly string[], fill = ' '): string =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0, fill)).join(' | ')} |`;
  return [
    line(head),
    line(
      head.map(() => ''),
      '-',
    ),
    ...body.map((row) => line(row)),
  ].join('\n');
};
