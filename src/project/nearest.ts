/** Number of letters to add, drop or change (Levenshtein's distance). @source V. I. Levenshtein, 1966 */
const distance = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (const [j, other] of [...b].entries())
      next.push(Math.min((row[j] ?? 0) + (letter === other ? 0 : 1), (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    row = next;
  }
  return row[b.length] ?? 0;
};

/** The name that a mistyped word probably means: a third of its letters may be wrong, signs and
 * capitals do not count; null where none is near. */
export const nearest = (word: string, names: readonly string[]): string | null => {
  const letters = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, '');
  const lower = letters(word.slice(0, 64));
  if (lower === '') return null;
  const ranked = names
    .map((name) => ({ name, off: letters(name).startsWith(lower) ? 1 : distance(lower, letters(name)) }))
    .sort((a, b) => a.off - b.off);
  const [best] = ranked;
  return best && best.off <= Math.max(2, lower.length / 3) ? best.name : null;
};

/** "Did you mean …?" with a space before it, or nothing. */
export const suggestion = (word: string, names: readonly string[]): string => {
  const meant = nearest(word, names);
  return meant === null ? '' : `Did you mean ${meant}?`;
};
