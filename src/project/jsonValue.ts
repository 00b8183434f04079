import { RESERVED_KEYS } from './freshId.ts';
import type { Path } from './fault.ts';

/** Deeper than any project; a file beyond it is not one. */
const DEEPEST = 60;

export interface NotJson {
  readonly path: Path;
  readonly what: string;
}

/**
 * The first place in a value that plain JSON cannot hold: NaN, infinities, undefined, functions, dates, typed arrays,
 * circles, reserved keys, or nesting without end. Null where everything is plain.
 */
export const findNotJson = (value: unknown): NotJson | null => visit(value, [], []);

const visit = (value: unknown, path: Path, above: readonly object[]): NotJson | null => {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return null;
  if (typeof value === 'number') return Number.isFinite(value) ? null : { path, what: `${value} is not a number` };
  if (typeof value !== 'object') return { path, what: `${typeof value} is not a JSON value` };
  if (above.length > DEEPEST) return { path, what: `it is nested more than ${DEEPEST} levels deep` };
  if (above.includes(value)) return { path, what: 'it contains itself' };
  const inside = [...above, value];
  if (Array.isArray(value)) {
    for (let i = 0; i < value.length; i += 1) {
      const found = visit(value[i], [...path, i], inside);
      if (found) return found;
    }
    return null;
  }
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== null && Object.getPrototypeOf(prototype) !== null)
    return { path, what: 'it is not a plain object' };
  for (const [key, inner] of Object.entries(value)) {
    if (RESERVED_KEYS.includes(key)) return { path: [...path, key], what: `"${key}" cannot be used as a name` };
    const found = visit(inner, [...path, key], inside);
    if (found) return found;
  }
  return null;
};
