import type { Complex } from '../../quantities/index.ts';

/** S of the plane modes of both ports, pressure amplitudes: s21 leaves by the second when one arrives at the first. */
export interface PlaneScattering {
  readonly s11: Complex;
  readonly s12: Complex;
  readonly s21: Complex;
  readonly s22: Complex;
}

/** What one solved frequency adds to the inside of the box; only where asked for. */
export interface BoxInside {
  /** 1 less all that leaves and all that is absorbed, for unit power in the plane mode of the first port */
  readonly imbalance: number;
  /** mean of |p|² over the plan for unit amplitude in the plane mode of the first and of the second port */
  readonly meanSquare: readonly [number, number];
}

/** The box at one frequency. */
export interface BoxLine {
  /** Hz */
  readonly frequency: number;
  readonly plane: PlaneScattering;
  /** power through the box into all modes, per unit power in each travelling mode of the first port */
  readonly modal: readonly number[];
  /** the same from plane mode to plane mode */
  readonly planeToPlane: number;
  readonly inside: BoxInside | null;
}

/** A third octave: transmission averaged over its lines. */
export interface BoxBand {
  /** nominal centre, Hz */
  readonly band: number;
  /** plane mode to plane mode, dB */
  readonly planeLoss: number;
  /** power spread over all travelling modes of the first port, all that leaves by the second, dB */
  readonly multimodeLoss: number;
  readonly lines: readonly BoxLine[];
}

/** All bands of a box. */
export interface BoxResult {
  readonly bands: readonly BoxBand[];
  /** of the finest mesh used */
  readonly unknowns: number;
  /** worst |imbalance| of the lines for which it was asked, otherwise null */
  readonly imbalance: number | null;
}
