import { THIRD_OCTAVES } from '../quantities/index.ts';
import type { BandError, ErrorModel } from './modelError.ts';

const BANDS = THIRD_OCTAVES.length;
/** nine octaves of three thirds each, 25 Hz to 10 kHz */
export const OCTAVE_COUNT = BANDS / 3;

/** Columns that a family's error takes: one common, one each octave, one each third octave. */
export const ERROR_COLUMNS = 1 + OCTAVE_COUNT + BANDS;

/** All parts of one class of construction: the method errs in them alike. */
export interface Family {
  readonly name: string;
  /** in words: the class of construction, or the parts that share a laboratory's curve */
  readonly of: string;
  /** predicted by class of construction, or measured in a laboratory */
  readonly kind: 'method' | 'measured';
  readonly model: ErrorModel;
}

/**
 * Error of a family in one draw, per third octave, dB: by how much R is better than the prediction.
 * @param error of the bands or of the rating; its thirds with those of the part's surrogate together
 * @param chain correlation of neighbouring octaves
 * @param columns of standard normal numbers, of which the family's begin at `first`
 * @param out error, dB per band
 */
export const familyErrorInto = (
  { common, octave, third }: BandError,
  chain: number,
  columns: readonly Float64Array[],
  first: number,
  draw: number,
  scale: number,
  out: Float64Array,
): void => {
  const shared = columns[first]?.[draw] ?? 0;
  const fresh = Math.sqrt(1 - chain ** 2);
  let link = 0;
  for (let o = 0; o < OCTAVE_COUNT; o += 1) {
    const innovation = columns[first + 1 + o]?.[draw] ?? 0;
    link = o === 0 ? innovation : chain * link + fresh * innovation;
    for (let b = 3 * o; b < 3 * o + 3; b += 1) {
      const alone = (third[b] ?? 0) * (columns[first + 1 + OCTAVE_COUNT + b]?.[draw] ?? 0);
      out[b] = scale * ((common[b] ?? 0) * shared + (octave[b] ?? 0) * link + alone);
    }
  }
};
