import { methods } from '../../src/contract/methods.ts';

/** The contract's methods as a table for DEVELOPERS.md. */
export const methodsTable = (): string => {
  const rows = Object.entries(methods).map(([name, { kind, what, params }]) => {
    const given = Object.keys(params.entries).map((key) => `\`${key}\``);
    return [`\`${name}\``, kind, given.join(', '), what];
  });
  const all = [['method', 'kind', 'parameters', 'what it is'], ...rows];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
  const line = (cells: readonly string[], fill = ' '): string =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0, fill)).join(' | ')} |`;
  const [head = [], ...body] = all;
  return [line(head), line(['', '', '', ''], '-'), ...body.map((row) => line(row))].join('\n');
};
