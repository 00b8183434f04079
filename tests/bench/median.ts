/** Value below which the given share of samples lies. @param share 0 to 1 */
export const quantile = (samples: readonly number[], share: number): number => {
  const sorted = samples.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
};

export const median = (samples: readonly number[]): number => quantile(samples, 0.5);

/** Milliseconds of each run. */
export const timed = (runs: number, run: (index: number) => void): number[] =>
  Array.from({ length: runs }, (_, index) => {
    const began = performance.now();
    run(index);
    return performance.now() - began;
  });
