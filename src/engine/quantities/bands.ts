/** Nominal third-octave band centres of every predicted curve, 25 Hz to 10 kHz. @source IEC 61260-1:2014, table E.1 */
export const THIRD_OCTAVES: readonly number[] = [
  25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000,
  5000, 6300, 8000, 10000,
];

/** Nominal octave band centres, 31.5 Hz to 8 kHz. @source IEC 61260-1:2014, table E.1 */
export const OCTAVES: readonly number[] = [31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000];

/**
 * Band number n of a nominal third-octave centre: f = 1000·10^(n/10).
 * @param nominal band centre, Hz, > 0
 * @returns integer n (0 at 1 kHz)
 * @source IEC 61260-1:2014, 5.2 (base ten)
 * @example bandNumber(125) // -9
 */
export const bandNumber = (nominal: number): number => Math.round(10 * Math.log10(nominal / 1000));

/**
 * Exact centre of the third-octave band that a nominal centre names, Hz.
 * @param nominal band centre, Hz, > 0
 * @source IEC 61260-1:2014, 5.2 (base ten)
 * @example exactCentre(125) // 125.89…
 */
export const exactCentre = (nominal: number): number => 1000 * 10 ** (bandNumber(nominal) / 10);
