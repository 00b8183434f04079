import type { Assembly } from '../assembly/index.ts';
import type { Fittings, VentPath } from '../openings/index.ts';
import type { Spectrum } from '../quantities/index.ts';
import type { FlankingElement } from './flankingElement.ts';

/** What a part is made of. Curves: R of the part, or Dn,e of a small element (A0 = 10 m²). Lengths in m. */
export type PartElement =
  | { readonly kind: 'assembly'; readonly assembly: Assembly; readonly fittings?: Fittings }
  /** a vent, piece by piece from the room outwards */
  | { readonly kind: 'path'; readonly path: VentPath }
  | { readonly kind: 'measured'; readonly quantity: 'R' | 'Dne'; readonly curve: Spectrum }
  | {
      readonly kind: 'slit';
      readonly length: number;
      readonly width: number;
      readonly depth: number;
      readonly edge: boolean;
    }
  | { readonly kind: 'hole'; readonly diameter: number; readonly depth: number }
  | { readonly kind: 'sealed' }
  | FlankingElement;

/** What a swap costs; null where the user has given nothing and the library has no illustrative price. */
export interface PartPrice {
  /** material and piece price of the whole part, in the project's currency */
  readonly materials: number | null;
  readonly labour: number | null;
  /** true where any figure is the library's illustrative default */
  readonly illustrative: boolean;
}

/** Another way to build the same part. */
export interface Candidate {
  readonly id: string;
  readonly name: string;
  readonly element: PartElement;
  readonly price: PartPrice;
}

export type PartKind =
  'wall' | 'roof' | 'ceiling' | 'floor' | 'door' | 'window' | 'vent' | 'service' | 'slit' | 'hole' | 'flanking';

/** One piece of the envelope with its own area (openings taken off), m²; of a flanking path the area it goes past. */
export interface Part {
  readonly id: string;
  readonly name: string;
  readonly kind: PartKind;
  /** the surface it lies in; its own id for a surface */
  readonly surface: string;
  readonly width: number;
  readonly height: number;
  readonly area: number;
  readonly element: PartElement;
  readonly candidates: readonly Candidate[];
}

/** A set of swaps tried together: part id to candidate id. */
export interface Option {
  readonly id: string;
  readonly name: string;
  readonly swaps: Readonly<Record<string, string>>;
}

/** Everything the evaluation needs to know of a build. */
export interface Build {
  readonly parts: readonly Part[];
  readonly options: readonly Option[];
  /** level of the source per band of 25 Hz to 10 kHz, dB (only differences matter); flat is all zero */
  readonly source: Spectrum;
}
