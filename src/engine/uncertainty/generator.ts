/** Even numbers in [0, 1), the same from the same start. */
export type Chance = () => number;

/**
 * A reproducible generator of even numbers: a Weyl sequence of 32 bits, scrambled (mulberry32), period 2³².
 * @param start whole number that decides the whole sequence
 * @returns generator of numbers in [0, 1)
 * @validity sampling for uncertainty; not for secrets
 * @source mulberry32, public domain (common practice)
 * @example createGenerator(1)() // 0.627…
 */
export const createGenerator = (start: number): Chance => {
  const state = { at: start >>> 0 };
  return () => {
    state.at = (state.at + 0x6d2b79f5) >>> 0;
    let mixed = state.at;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
};
