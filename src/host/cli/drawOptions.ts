/** How to draw, as asked on the command line. */
export interface Drawing {
  readonly samples: number;
  readonly start: number;
}

/** The words without the options of drawing, and what those ask for; or the sentence that says what is wrong. */
export type DrawOptions =
  { readonly words: readonly string[]; readonly drawing: Drawing | null } | { readonly sentence: string };

/** Commands that draw. */
const DRAWS: readonly string[] = ['predict', 'shell'];

const NUMBERS: Readonly<Record<string, { readonly least: number; readonly most: number }>> = {
  '--samples': { least: 100, most: 200_000 },
  '--seed': { least: 0, most: 4_294_967_295 },
};

const DEFAULTS = { '--samples': 10_000, '--seed': 1 };

/** Takes --uncertainty, --samples N and --seed N (written with a blank or an equals sign) out of the command line. */
export const drawOptions = (words: readonly string[]): DrawOptions => {
  const kept: string[] = [];
  const given = new Map<string, number>();
  const drawn: string[] = [];
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i] ?? '';
    if (word === '--') return finish([...kept, ...words.slice(i)], given, drawn);
    const [name = '', joined] = word.split('=', 2);
    const range = Object.hasOwn(NUMBERS, name) ? NUMBERS[name] : undefined;
    if (word === '--uncertainty') drawn.push(word);
    else if (range) {
      drawn.push(name);
      const text = joined ?? words[(i += 1)] ?? '';
      const value = /^\d+$/.test(text) ? Number(text) : NaN;
      if (!(value >= range.least && value <= range.most))
        return { sentence: `${name} is "${text}"; allowed is a whole number from ${range.least} to ${range.most}.` };
      given.set(name, value);
    } else kept.push(word);
  }
  return finish(kept, given, drawn);
};

const finish = (
  words: readonly string[],
  given: ReadonlyMap<string, number>,
  drawn: readonly string[],
): DrawOptions => {
  const [first] = drawn;
  if (first === undefined) return { words, drawing: null };
  if (!drawn.includes('--uncertainty')) return { sentence: `${first} needs --uncertainty beside it.` };
  const command = words.find((word) => !word.startsWith('-'));
  if (command !== undefined && !DRAWS.includes(command))
    return { sentence: `--uncertainty goes with ${DRAWS.join(' and ')}, not with ${command}.` };
  return {
    words,
    drawing: {
      samples: given.get('--samples') ?? DEFAULTS['--samples'],
      start: given.get('--seed') ?? DEFAULTS['--seed'],
    },
  };
};
