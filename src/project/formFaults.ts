import * as v from 'valibot';
import type { Fault, Path } from './fault.ts';
import { knownKeys } from './knownKeys.ts';
import { projectSchema } from './schema.ts';
import { isUnknownKey, issuePath, schemaFault } from './schemaFault.ts';

/** The same value without the keys at these places. */
const withoutKeys = (value: unknown, places: readonly Path[]): unknown => {
  if (typeof value !== 'object' || value === null || places.length === 0) return value;
  const gone = places.flatMap(([first, ...rest]) => (rest.length === 0 ? [String(first)] : []));
  const inside = (key: string): readonly Path[] =>
    places.flatMap(([first, ...rest]) => (String(first) === key && rest.length > 0 ? [rest] : []));
  const kept = Object.entries(value).filter(([key]) => !gone.includes(key));
  const entries = kept.map(([key, inner]) => [key, withoutKeys(inner, inside(key))] as const);
  return Array.isArray(value) ? entries.map(([, inner]) => inner) : Object.fromEntries(entries);
};

/**
 * Every fault of form. The schema library names one unknown key of an object at a time, so the rest is asked again.
 * @param issues what the schema library said of the document
 * @param room about how many faults are wanted
 */
export const formFaults = (
  document: unknown,
  issues: readonly v.BaseIssue<unknown>[],
  room: number,
): readonly Fault[] => {
  const faults = issues.slice(0, room).map((issue) => schemaFault(issue, knownKeys));
  const strays = issues.filter(isUnknownKey).map(issuePath);
  if (strays.length === 0 || strays.length >= room) return faults;
  const rest = withoutKeys(document, strays);
  const again = v.safeParse(projectSchema, rest);
  const others = issues
    .filter(isUnknownKey)
    .slice(0, room)
    .map((issue) => schemaFault(issue, knownKeys));
  return again.success ? faults : [...others, ...formFaults(rest, again.issues, room - strays.length)];
};
