/** A value and its weight. */
export type Weighted = readonly [value: number, weight: number];

/**
 * Quantile of weighted values that holds a further value with exactly the share asked for, on average: each value stands at
 * the middle of its weight, with straight lines in between; the share grows by (share − ½)/n, as small samples ask for.
 * @param values at least one of weight > 0
 * @param share 0.5 to 1
 * @param size n, how many even values would tell as much
 * @returns quantile; the largest value where the sample is too small for the share
 * @source Hyndman and Fan, The American Statistician 50 (1996) 361-365, definition 6 (position p·(n + 1)), which for even
 *   weights this is; Kish, Survey Sampling (1965), for n of uneven ones
 * @example weightedQuantile([[1, 1], [2, 1], [3, 1]], 0.5, 3) // 2
 */
export const weightedQuantile = (values: readonly Weighted[], share: number, size: number): number => {
  const sorted = values.filter(([, weight]) => weight > 0).sort(([a], [b]) => a - b);
  const all = sorted.reduce((sum, [, weight]) => sum + weight, 0);
  const wanted = all * (share + (share - 0.5) / size);
  let passed = 0;
  let [before, at] = [sorted[0]?.[0] ?? NaN, 0];
  for (const [value, weight] of sorted) {
    const middle = passed + weight / 2;
    if (middle >= wanted) return at === 0 ? value : before + ((value - before) * (wanted - at)) / (middle - at);
    [before, at] = [value, middle];
    passed += weight;
  }
  return before;
};
