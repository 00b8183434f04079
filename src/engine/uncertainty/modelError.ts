import { THIRD_OCTAVES } from '../quantities/index.ts';
import { laboratorySpread } from '../transmission/index.ts';
import { MODEL_ERROR_RECORD } from './modelErrorRecord.ts';

/** Standard deviation, dB, of which 1.645 times holds for 90 of 100 measured cases beside what their inputs explain. */
export interface ErrorScale {
  readonly rating: number;
  readonly band: number;
}

/** The scales learned from the measured record. */
export interface ModelErrorRecord {
  /** of a class that was never measured: as every other class, each counting alike */
  readonly all: ErrorScale;
  /** by class of construction, with how many of its own figures were measured; few of them lean on the other classes */
  readonly classes: Readonly<Record<string, ErrorScale & { readonly ratings: number; readonly bands: number }>>;
}

/** Error of R in dB per third octave: common·zc + octave·zo + third·zt with standard normal z. */
export interface BandError {
  readonly common: Float64Array;
  readonly octave: Float64Array;
  readonly third: Float64Array;
}

/**
 * Error of a method or a laboratory. The zo of neighbouring octaves are a chain with correlation `chain`; the zt are
 * independent. Curves, the bass figure and Rw + C50-5000 go by `bands`. Rw and STC go by `rating`: measured ratings are met
 * more closely than errors of the same walls' single bands, drawn at random, would allow.
 */
export interface ErrorModel {
  readonly bands: BandError;
  readonly rating: BandError;
  readonly chain: number;
}

/** Correlation of the residuals of neighbouring octaves. @source residuals of tests/reference/tl: 0.5 one octave apart, 0.2 two, 0 three */
export const NEIGHBOURS = 0.5;

/** What laboratories differ by in the middle bands is part of the measured record already, dB. @source as the likely error of a prediction */
const MIDDLE = 1.8;

/**
 * How far predictions of a class of construction are off beside what their inputs explain.
 * @param kind class of construction
 * @param record scales learned from measurements
 * @returns standard deviations of the rating and of an octave band, dB
 * @source tests/reference/tl (measured record), by the 90th percentile of the residuals
 * @example errorScale('masonry', MODEL_ERROR_RECORD).band
 */
export const errorScale = (kind: string, record: ModelErrorRecord = MODEL_ERROR_RECORD): ErrorScale =>
  record.classes[kind] ?? record.all;

/** Variance of Σ w·zo where the zo are a chain. @param weights one per octave */
const chainVariance = (weights: readonly number[], chain: number): number =>
  weights.reduce((sum, w, i) => sum + weights.reduce((row, v, k) => row + w * v * chain ** Math.abs(i - k), 0), 0);

const even = (dB: number): Float64Array => new Float64Array(THIRD_OCTAVES.length).fill(dB);

/**
 * Splits the error of a class into a part common to all bands and a part of its own in each octave, so that the ratings and
 * the bands of the measured record are both met: σ_band² = c² + o², σ_rating² = c² + κ·o² with κ from how the rating weighs
 * the octaves. Where a class's ratings are met more closely than that allows, they get a smaller error of their own.
 * @param scale standard deviations of the class
 * @param weights ∂rating/∂R of the nine octaves 31.5 Hz to 8 kHz; they add up to about 1
 * @returns error model over the third octaves; outside the middle bands what laboratories differ by comes on top
 * @validity laboratory conditions
 * @source residuals of tests/reference/tl; ISO 12999-1:2020, table 2 (reproducibility; annex B for its use)
 */
export const errorModel = (scale: ErrorScale, weights: readonly number[]): ErrorModel => {
  const chained = Math.max(1e-3, chainVariance(weights, NEIGHBOURS));
  const [rating, band] = [scale.rating ** 2, scale.band ** 2];
  const common = Math.min(band, Math.max(0, (rating - chained * band) / Math.max(1e-3, 1 - chained)));
  const octave = band - common;
  const rated = Math.min(octave, rating / chained);
  return {
    bands: {
      common: even(Math.sqrt(common)),
      octave: even(Math.sqrt(octave)),
      third: Float64Array.from(THIRD_OCTAVES, (each) =>
        Math.sqrt(Math.max(0, laboratorySpread(each) ** 2 - MIDDLE ** 2)),
      ),
    },
    rating: { common: even(Math.sqrt(common)), octave: even(Math.sqrt(rated)), third: even(0) },
    chain: NEIGHBOURS,
  };
};

/**
 * Share of the variance between laboratories that all bands have in common: between independent bands (u of Rw + C 0.6 dB)
 * and fully common ones (2.1 dB) lies the 1.2 dB that laboratories really differ by in Rw.
 * @source ISO 12999-1:2020, annex B, table B.2 (0.6 and 2.1 dB) and table 3 (1.2 dB; from memory)
 */
const COMMON_IN_LABORATORIES = (1.2 ** 2 - 0.6 ** 2) / (2.1 ** 2 - 0.6 ** 2);

/** Error of a laboratory curve. @param spread standard deviation per third octave, dB @source ISO 12999-1:2020, table 2 and annex B */
export const laboratoryErrorModel = (spread: readonly number[]): ErrorModel => {
  const bands = {
    common: Float64Array.from(spread, (u) => u * Math.sqrt(COMMON_IN_LABORATORIES)),
    octave: even(0),
    third: Float64Array.from(spread, (u) => u * Math.sqrt(1 - COMMON_IN_LABORATORIES)),
  };
  return { bands, rating: bands, chain: 0 };
};
