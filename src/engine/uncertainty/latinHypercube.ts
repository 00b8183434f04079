import type { Chance } from './generator.ts';
import { normalQuantile } from './normalQuantile.ts';

/** Draws beyond this many standard deviations are taken at it: no material is sold that far off. */
export const FURTHEST = 3;

/**
 * Latin hypercube of even numbers: each dimension has exactly one sample in each of N equal strata, in random order.
 * @param samples N, ≥ 1
 * @param dimensions number of inputs
 * @param generator source of chance
 * @returns one column of N numbers in (0, 1) for each dimension
 * @source McKay, Beckman and Conover, Technometrics 21 (1979) 239-245
 * @example latinHypercube(4, 1, createGenerator(1)) // one number in each quarter
 */
export const latinHypercube = (samples: number, dimensions: number, generator: Chance): Float64Array[] =>
  Array.from({ length: dimensions }, () => {
    const column = new Float64Array(samples);
    for (let i = 0; i < samples; i += 1) column[i] = (i + Math.max(1e-6, generator())) / samples;
    for (let i = samples - 1; i > 0; i -= 1) {
      const other = Math.floor(generator() * (i + 1));
      const kept = column[i] ?? 0;
      column[i] = column[other] ?? 0;
      column[other] = kept;
    }
    return column;
  });

/**
 * Latin hypercube of standard normal numbers, kept within ±3.
 * @see latinHypercube
 * @example normalHypercube(1000, 3, createGenerator(1))
 */
export const normalHypercube = (samples: number, dimensions: number, generator: Chance): Float64Array[] => {
  const columns = latinHypercube(samples, dimensions, generator);
  for (const column of columns)
    for (let i = 0; i < samples; i += 1)
      column[i] = Math.min(FURTHEST, Math.max(-FURTHEST, normalQuantile(column[i] ?? 0.5)));
  return columns;
};
