import { methods } from '../../contract/methods.ts';
import { cliCommands, type CliCommand } from './cliCommands.ts';

const OPTIONS = [
  '  --json     print one JSON object and nothing else',
  '  --help     print this help',
  '  -          in place of FILE: read standard input',
].join('\n');

const EXITS = 'Exit status: 0; 2 for bad input, with a sentence for each fault; 1 for a fault of Lullwright.';

const summary = ({ method }: CliCommand): string => methods[method].what;

/** The whole command line on one page. */
export const help = (): string => {
  const rows = Object.entries(cliCommands).map(([name, it]) => `  ${`${name} ${it.file}`.padEnd(16)} ${summary(it)}`);
  return [
    'Lullwright: plan, build and prove a room for loud music that does not trouble the neighbours.',
    '',
    'Usage: lullwright COMMAND FILE [--json] [--help]',
    '',
    ...rows,
    '',
    OPTIONS,
    '',
    EXITS,
    'lullwright COMMAND --help says more about a command.',
  ].join('\n');
};

/** One command in detail. */
export const helpOn = (name: string, it: CliCommand): string =>
  [`Usage: lullwright ${name} ${it.file} [--json]`, '', `${summary(it)}.`, '', it.detail, '', OPTIONS, '', EXITS].join(
    '\n',
  );
