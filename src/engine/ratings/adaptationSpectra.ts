import type { Spectrum } from '../quantities/index.ts';

/** Spectrum number 1 (C: living activities, talk, music) or 2 (Ctr: town traffic, disco music) over a range in Hz. */
export type AdaptationRange =
  | 'C'
  | 'C50_3150'
  | 'C50_5000'
  | 'C100_5000'
  | 'Ctr'
  | 'Ctr50_3150'
  | 'Ctr50_5000'
  | 'Ctr100_5000'
  | 'octaveC'
  | 'octaveCtr';

const BANDS: readonly number[] = [
  50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000,
];

const C50_3150: readonly number[] = [
  -40, -36, -33, -29, -26, -23, -21, -19, -17, -15, -13, -12, -11, -10, -9, -9, -9, -9, -9,
];

const C50_5000: readonly number[] = [
  -41, -37, -34, -30, -27, -24, -22, -20, -18, -16, -14, -13, -12, -11, -10, -10, -10, -10, -10, -10, -10,
];

/** one spectrum serves all ranges of Ctr */
const CTR: readonly number[] = [
  -25, -23, -21, -20, -20, -18, -16, -15, -14, -13, -12, -11, -9, -8, -9, -10, -11, -13, -15, -16, -18,
];

const range = (values: readonly number[], from: number, to: number): Spectrum => {
  const first = BANDS.indexOf(from);
  const last = BANDS.indexOf(to);
  return { bands: BANDS.slice(first, last + 1), values: values.slice(first, last + 1) };
};

/**
 * Levels of the adaptation spectra, A-weighted, dB, normalised to 0 dB overall.
 * @source ISO 717-1:2020, Table 4 and Annex B, Table B.1; octave spectra from memory, equal to the third octaves' sums
 */
export const SPECTRA: Readonly<Record<AdaptationRange, Spectrum>> = {
  C: range(C50_3150, 100, 3150),
  C50_3150: range(C50_3150, 50, 3150),
  C50_5000: range(C50_5000, 50, 5000),
  C100_5000: range(C50_5000, 100, 5000),
  Ctr: range(CTR, 100, 3150),
  Ctr50_3150: range(CTR, 50, 3150),
  Ctr50_5000: range(CTR, 50, 5000),
  Ctr100_5000: range(CTR, 100, 5000),
  octaveC: { bands: [125, 250, 500, 1000, 2000], values: [-21, -14, -8, -5, -4] },
  octaveCtr: { bands: [125, 250, 500, 1000, 2000], values: [-14, -10, -7, -4, -6] },
};
