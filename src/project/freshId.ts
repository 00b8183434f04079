/** Keys that objects carry by themselves; as ids they would be lost on the way through a parser. */
export const RESERVED_KEYS: readonly string[] = ['__proto__', 'prototype', 'constructor'];

/**
 * An id made from a name that the document does not use yet: "North wall" gives north-wall, then north-wall-2.
 * @param name whatever the user called the thing
 * @param taken ids already in use
 */
export const freshId = (name: string, taken: Iterable<string>): string => {
  const used = new Set([...taken, ...RESERVED_KEYS]);
  const slug = name
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 48)
    .replace(/^-+|-+$/g, '');
  const stem = slug || 'item';
  if (!used.has(stem)) return stem;
  for (let count = 2; ; count += 1) if (!used.has(`${stem}-${count}`)) return `${stem}-${count}`;
};
