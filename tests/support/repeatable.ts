import type { Parameters } from 'fast-check';

/** Multiply-with-shift generator of 32-bit integers: the same start gives the same run, today and in a year. */
const generator = (start: number) => {
  let state = start | 0;
  return {
    clone: () => generator(state),
    next: (): number => {
      state = (state + 0x6d2b79f5) | 0;
      let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
      mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
      return (mixed ^ (mixed >>> 14)) | 0;
    },
    getState: (): readonly number[] => [state],
  };
};

/** Settings of a property test that runs through the same cases every time. */
export const repeatable = (start: number, numRuns = 100): Parameters<unknown> => ({
  randomType: () => generator(start),
  numRuns,
});
