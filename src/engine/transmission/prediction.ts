import type { Note } from '../quantities/index.ts';
import type { Ratings } from '../ratings/index.ts';

/** `draft` while something is being dragged, `full` at rest (12 × 160 or 24 × 320 lines × angles per band). */
export type Resolution = 'draft' | 'full';

/** One leaf of the built part: everything that bends together. */
export interface LeafSummary {
  /** Indices of its layers in the assembly. */
  readonly layers: readonly number[];
  readonly name: string;
  /** kg/m² */
  readonly surfaceMass: number;
  /** N·m, at the critical frequency */
  readonly bendingStiffness: number;
  /** Hz; null for a limp leaf */
  readonly criticalFrequency: number | null;
  /** total in place, at the critical frequency */
  readonly lossFactor: number;
}

/** One way through: its share of the transmitted power is `tau` per band (linear). */
export interface TransmissionPath {
  readonly key: 'cavity' | 'resonant' | 'links' | 'perimeter' | 'frame' | 'cap';
  readonly name: string;
  readonly tau: readonly number[];
}

/** A built part predicted: R over the third octaves of `bands` with everything that explains it. */
export interface Prediction {
  /** nominal third octaves 25 Hz to 10 kHz */
  readonly bands: readonly number[];
  /** sound reduction index, dB */
  readonly R: readonly number[];
  /** likely error, one standard deviation, dB per band */
  readonly spread: readonly number[];
  /** per band: null, or why the model is outside its validity there */
  readonly extrapolated: readonly (string | null)[];
  readonly ratings: Ratings;
  /** likely error of Rw, one standard deviation, dB */
  readonly ratingSpread: number;
  /** kg/m², frame not counted */
  readonly surfaceMass: number;
  /** m */
  readonly thickness: number;
  /** mass-air-mass resonances of the cavities, Hz, ascending */
  readonly resonances: readonly number[];
  /** critical frequencies of the leaves with stiffness, Hz, in order from the room */
  readonly criticalFrequencies: readonly number[];
  readonly leaves: readonly LeafSummary[];
  readonly paths: readonly TransmissionPath[];
  /** the class of construction whose measured record gives the spread, for example "stud wall: timber, filled" */
  readonly constructionClass: string;
  readonly resolution: Resolution;
  readonly notes: readonly Note[];
}
