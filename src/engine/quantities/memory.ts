/** Results by what they were computed from. */
export interface Memory<T> {
  find(key: string): T | undefined;
  keep(key: string, value: T): void;
  /** The result kept under the key, computed and kept where there is none. */
  recall(key: string, compute: () => T): T;
  /** How many results are kept. */
  count(): number;
}

/**
 * A memory that forgets the longest unused result first.
 * @param most results kept, ≥ 1; Infinity where none may be forgotten
 * @returns memory, empty
 */
export const createMemory = <T>(most: number): Memory<T> => {
  const kept = new Map<string, T>();
  const keep = (key: string, value: T): void => {
    kept.delete(key);
    kept.set(key, value);
    const oldest = kept.keys().next();
    if (kept.size > most && !oldest.done) kept.delete(oldest.value);
  };
  const find = (key: string): T | undefined => {
    const value = kept.get(key);
    if (value !== undefined) keep(key, value);
    return value;
  };
  return {
    find,
    keep,
    recall: (key, compute) => {
      const known = find(key);
      if (known !== undefined) return known;
      const value = compute();
      keep(key, value);
      return value;
    },
    count: () => kept.size,
  };
};
