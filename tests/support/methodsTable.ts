import { methods } from '../../src/contract/methods.ts';
import { markdownTable } from './markdownTable.ts';

/** The contract's methods as a table for DEVELOPERS.md. */
export const methodsTable = (): string =>
  markdownTable([
    ['method', 'kind', 'parameters', 'what it is'],
    ...Object.entries(methods).map(([name, { kind, what, params }]) => {
      const given = Object.keys(params.entries).map((key) => `\`${key}\``);
      return [`\`${name}\``, kind, given.join(', '), what];
    }),
  ]);
