import type { Assembly } from '../assembly/index.ts';
import type { Ratings } from '../ratings/index.ts';
import type { VentBox } from './ventElement.ts';
import type { BoxSound } from './ventBoxSound.ts';

/** What a vent asks of others; handed in, so that the caller may remember or draft it. */
export interface VentPorts {
  readonly boxSound: (box: VentBox) => BoxSound;
  /** R of an assembly at a size (m), per third octave 25 Hz to 10 kHz */
  readonly reduction: (
    assembly: Assembly,
    size: { readonly width: number; readonly height: number },
  ) => readonly number[];
}

export type VentWayKind = 'air' | 'casing' | 'duct-wall' | 'joints';

/** One way of the sound through a vent. */
export interface VentWay {
  readonly kind: VentWayKind;
  readonly name: string;
  /** place in the path; null for the air and for joints */
  readonly element: number | null;
  /** τ·S per third octave 25 Hz to 10 kHz, m² */
  readonly openArea: readonly number[];
}

/** A vent as the sound meets it, per third octave 25 Hz to 10 kHz. */
export interface VentSound {
  readonly bands: readonly number[];
  /** of the mouth in the room, m² */
  readonly area: number;
  readonly ways: readonly VentWay[];
  /** all ways together, m² */
  readonly openArea: readonly number[];
  /** of a plain hole of the first mouth through the wall, m² */
  readonly hole: readonly number[];
  /** by how much the partitions of its boxes, as they pass sound themselves, raise the way along the air, dB */
  readonly partitions: readonly number[];
  /** against that hole, dB; negative where the vent lets more through than the hole */
  readonly insertionLoss: readonly number[];
  /** Dn,e, dB */
  readonly normalisedDifference: readonly number[];
  /** of Dn,e */
  readonly ratings: Ratings;
  /** the way that lets most through */
  readonly limiting: readonly VentWayKind[];
  /** likely error, one standard deviation, dB */
  readonly spread: readonly number[];
  readonly extrapolated: readonly (string | null)[];
  /** true where a box is only estimated */
  readonly estimate: boolean;
}
