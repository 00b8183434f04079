/**
 * Mean free path of sound in a flat cavity from edge to edge: π·S/P = π·a·b/(2·(a + b)).
 * @param sides a and b, m, > 0
 * @returns path, m
 * @validity cavities shallow against the wavelength, or waves along them
 * @source Kosten, Acustica 10 (1960) 245-250 (two dimensions; from memory)
 * @example freePath([1.48, 1.23]) // 1.06
 */
export const freePath = ([a, b]: readonly [number, number]): number => (Math.PI * a * b) / (2 * (a + b));
