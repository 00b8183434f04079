/** A step from one format version to the next. */
export type Migration = (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** By the version they start from. Version 1 is the first, so there is none yet. */
export const migrations: ReadonlyMap<number, Migration> = new Map();

/**
 * The document brought up to a version, step by step; null where a step is missing.
 * @param steps migrations by the version they start from
 */
export const migrate = (
  document: Readonly<Record<string, unknown>>,
  from: number,
  to: number,
  steps: ReadonlyMap<number, Migration> = migrations,
): Readonly<Record<string, unknown>> | null => {
  if (from === to) return document;
  const step = steps.get(from);
  return step ? migrate(step(document), from + 1, to, steps) : null;
};
