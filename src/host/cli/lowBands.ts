/** Bands that --uncertainty tells of, by the one in the middle, Hz: its place among the third octaves from 25 Hz. */
const LOW = 4;

/** Under every table of R without more words. */
export const LOW_NOTE =
  'Below 100 Hz next to nothing was measured; --uncertainty says what stands behind 50, 63 and 80 Hz.';

/** What stands behind 50, 63 and 80 Hz; nothing where the figures are measured ones. @param beyond per third octave from 25 Hz */
export const lowBands = (beyond: readonly (string | null)[]): readonly string[] => {
  const said = beyond[LOW] ?? null;
  return said === null ? [] : [`50 to 80 Hz: ${said}`];
};
