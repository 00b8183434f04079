import type { FourPole } from './fourPole.ts';

/** What a baffled box does to sound, from the wave solution or estimated. */
export interface BoxSound {
  /** transfer matrix of the plane wave between the two ducts, at any frequency within the bands */
  readonly pole: (frequency: number) => FourPole;
  /** power transmission of all travelling modes, per third octave of `bands` */
  readonly bands: readonly number[];
  readonly transmission: readonly number[];
  /** mean |p|² inside for a unit plane wave arriving from outside, and from the room; null: estimate it */
  readonly meanSquare: readonly (readonly [fromRoom: number, fromOutside: number])[] | null;
  /** true: plane-wave chain, ±12 dB above 200 Hz */
  readonly estimate: boolean;
}
