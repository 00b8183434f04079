/** One fault in a document: where, what was found, what is allowed, and all of it as a sentence with a way out. */
export interface Fault {
  readonly path: string;
  readonly value: string;
  readonly allowed: string;
  readonly sentence: string;
}

/** A place in a document: keys and list positions from the top. */
export type Path = readonly (string | number)[];

/** surfaces[0].openings[1].width_m */
export const pathText = (path: Path): string =>
  path.reduce<string>(
    (text, step) =>
      typeof step === 'number'
        ? `${text}[${step}]`
        : /^[A-Za-z0-9_.-]+$/.test(step)
          ? `${text}${text && '.'}${step}`
          : `${text}[${JSON.stringify(step)}]`,
    '',
  );

/** A value as it stands in a sentence: JSON, cut short. */
export const valueText = (value: unknown): string => {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return String(value);
  if (typeof value !== 'string') return typeof value === 'undefined' ? 'nothing' : typeof value;
  return JSON.stringify(value.length > 60 ? `${value.slice(0, 60)}…` : value);
};

/**
 * A fault worded in the house's one way: "surfaces[0].width_m is -3; allowed: a number from 0.1 to 200 m. …".
 * @param wayOut a whole sentence, with its full stop
 */
export const fault = (path: Path, value: unknown, allowed: string, wayOut = ''): Fault => {
  const where = pathText(path) || 'The document';
  const is = value === undefined ? 'is missing' : `is ${valueText(value)}`;
  const sentence = `${where} ${is}; allowed: ${allowed}.${wayOut && ` ${wayOut}`}`;
  return { path: pathText(path), value: valueText(value), allowed, sentence };
};

/** A key that the format does not know. @param meant "Did you mean …?" or nothing */
export const unknownKey = (path: Path, value: unknown, meant: string): Fault => {
  const key = String(path.at(-1));
  const sentence = `${pathText(path)} (${valueText(value)}) is not a key that the format knows here. ${meant && `${meant} `}Correct "${key}" or take it out.`;
  return { path: pathText(path), value: valueText(value), allowed: 'only the keys that the format knows', sentence };
};

/** A key that the format needs. */
export const missingKey = (path: Path): Fault => {
  const key = String(path.at(-1));
  const sentence = `${pathText(path)} is missing. Add "${key}" with its value.`;
  return { path: pathText(path), value: valueText(undefined), allowed: 'a value', sentence };
};

/** A list of names for a sentence, cut after twelve. */
export const listText = (names: readonly string[]): string => {
  if (names.length === 0) return 'there is none yet';
  const shown = names.slice(0, 12).join(', ');
  return names.length > 12 ? `${shown} and ${names.length - 12} more` : shown;
};
