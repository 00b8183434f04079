import { createClient, Refusal } from '../../contract/client.ts';
import { createService } from '../../service/service.ts';
import { cliCommands } from './cliCommands.ts';
import { help, helpOn } from './help.ts';
import { readArguments } from './readArguments.ts';
import { readInput } from './readInput.ts';

/** What a run leaves behind: texts for the two outputs and the exit status. */
export interface Outcome {
  readonly out: string;
  readonly sentences: readonly string[];
  readonly status: 0 | 1 | 2;
}

const printed = (out: string): Outcome => ({ out, sentences: [], status: 0 });
const badInput = (...sentences: readonly string[]): Outcome => ({ out: '', sentences, status: 2 });

const refusedBy = ({ error }: Refusal): Outcome => {
  const sentences = error.faults?.length ? error.faults.map((fault) => fault.sentence) : [error.sentence];
  return error.code === 'internal' ? { out: '', sentences, status: 1 } : badInput(...sentences);
};

/** Runs one command line. @param words after the program's name @param width of the terminal, letters */
export const run = async (words: readonly string[], width: number, version: string): Promise<Outcome> => {
  const asked = readArguments(words);
  if (asked.kind === 'wrong') return badInput(asked.sentence);
  const command = asked.command === null ? undefined : cliCommands[asked.command];
  if (asked.kind === 'help') return printed(command && asked.command ? helpOn(asked.command, command) : help());
  if (!command) return badInput(`There is no command "${asked.command}".`);
  const input = await readInput(asked.file);
  if ('sentence' in input) return badInput(input.sentence);
  const about = { version, store: '', runtime: `Node ${process.versions.node}` };
  const answer = createService({ about, store: null, examples: [] });
  try {
    const { value, show } = await command.run(createClient(answer), input.text, asked.drawing, asked.design);
    return printed(asked.json ? JSON.stringify(value) : show(width));
  } catch (fault) {
    if (fault instanceof Refusal) return refusedBy(fault);
    throw fault;
  }
};
