/** New values for some keys; a key given as undefined is taken out. */
export type Patch<T> = { readonly [K in keyof T]?: T[K] | undefined };

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Equal as JSON values, whatever the order of keys. */
export const equal = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (!isRecord(a) || !isRecord(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && equal(a[key], b[key]));
};

/** The object with the patch laid over it; the same reference when that changes nothing. */
export const patched = <T extends object>(object: T, patch: Patch<T>): T => {
  const before = new Map<string, unknown>(Object.entries(object));
  const changes = Object.entries(patch).filter(([key, value]) => !equal(before.get(key), value));
  if (changes.length === 0) return object;
  const after = new Map([...before, ...changes]);
  return Object.fromEntries([...after].filter(([, value]) => value !== undefined)) as T;
};

/** The record without one key. */
export const without = <T>(record: Readonly<Record<string, T>>, key: string): Record<string, T> =>
  Object.fromEntries(Object.entries(record).filter(([other]) => other !== key));

/** The list with each member changed; the same reference when none has. */
export const mapped = <T>(list: readonly T[], change: (member: T) => T): T[] => {
  const next = list.map(change);
  return next.every((member, i) => member === list[i]) ? (list as T[]) : next;
};
