import type { Project } from '../schema.ts';

/** One kind of edit: pure, named for the history. The same project comes back when nothing changes. */
export interface Command<A> {
  label(args: A): string;
  apply(project: Project, args: A): Project;
}

/** Why a command was not carried out; the message is a sentence for the user. */
export class CommandRefusal extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = 'CommandRefusal';
  }
}

export const refuse = (sentence: string): never => {
  throw new CommandRefusal(sentence);
};

/** A plain copy, so that nothing of the caller's ends up in the document. */
const copy = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(copy);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, copy(inner)]));
};

/**
 * Finishes what is new: keys without a value go, since JSON has none, and the rest is frozen. Whatever is frozen
 * already is shared with an earlier project and left alone.
 */
const finish = (value: unknown): void => {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return;
  for (const [key, inner] of Object.entries(value))
    if (inner === undefined) Reflect.deleteProperty(value, key);
    else finish(inner);
  Object.freeze(value);
};

/** Makes a command that copies its arguments, shares what has not changed and freezes its result. */
export const command = <A>(
  label: string | ((args: A) => string),
  apply: (project: Project, args: A) => Project,
): Command<A> => ({
  label: (args) => (typeof label === 'string' ? label : label(args)),
  apply: (project, args) => {
    const next = apply(project, copy(args) as A);
    if (next !== project) finish(next);
    return next;
  },
});
