import { nearest } from '../../contract/nearest.ts';
import { cliCommands } from './cliCommands.ts';
import { drawOptions, type Drawing } from './drawOptions.ts';

/** How vents are to be designed. */
export interface Design {
  readonly bass: boolean;
}

/** What was asked for on the command line, or the sentence that says why it cannot be understood. */
export type Asked =
  | { readonly kind: 'help'; readonly command: string | null }
  | {
      readonly kind: 'run';
      readonly command: string;
      readonly file: string;
      readonly json: boolean;
      readonly drawing: Drawing | null;
      /** with designs, and whether they mind the bass; null without */
      readonly design: Design | null;
    }
  | { readonly kind: 'wrong'; readonly sentence: string };

const OPTIONS = ['--json', '--help', '-h', '--uncertainty', '--samples', '--seed', '--design', '--bass'];
/** The command that designs. */
const DESIGNS = 'breathe';

const wrong = (sentence: string): Asked => ({ kind: 'wrong', sentence });

const meant = (word: string, names: readonly string[]): string => {
  const name = nearest(word, names);
  return name === null ? 'See lullwright --help.' : `Did you mean ${name}?`;
};

/** @param words the command line after the program's name */
export const readArguments = (all: readonly string[]): Asked => {
  const draw = drawOptions(all);
  if ('sentence' in draw) return wrong(draw.sentence);
  const { words, drawing } = draw;
  const end = words.indexOf('--');
  const before = end < 0 ? words : words.slice(0, end);
  const options = before.filter((word) => word.startsWith('-') && word !== '-');
  const names = [...before.filter((word) => !options.includes(word)), ...(end < 0 ? [] : words.slice(end + 1))];
  const [command, file, ...more] = names;

  const unknown = options.find((option) => !OPTIONS.includes(option));
  if (unknown !== undefined) return wrong(`There is no option ${unknown}. ${meant(unknown, OPTIONS)}`);
  if (command !== undefined && !Object.hasOwn(cliCommands, command))
    return wrong(`There is no command "${command}". ${meant(command, Object.keys(cliCommands))}`);
  if (command === undefined || options.includes('--help') || options.includes('-h'))
    return command === undefined && options.includes('--json')
      ? wrong(`A command is missing before --json: ${Object.keys(cliCommands).join(', ')}.`)
      : { kind: 'help', command: command ?? null };
  const design = options.includes('--design');
  const bass = options.includes('--bass');
  if (bass && !design) return wrong('--bass needs --design beside it.');
  if (design && command !== DESIGNS) return wrong(`--design goes with ${DESIGNS}, not with ${command}.`);
  if (file === undefined)
    return wrong(`lullwright ${command} needs a file: lullwright ${command} ${cliCommands[command]?.file ?? 'FILE'}.`);
  if (more.length > 0) return wrong(`lullwright ${command} takes one file; "${more.join(' ')}" is too much.`);
  return { kind: 'run', command, file, json: options.includes('--json'), drawing, design: design ? { bass } : null };
};
