import type { Assembly } from '../assembly/index.ts';
import type { Spectrum } from '../quantities/index.ts';
import type { Junction, Run } from './flankingJunction.ts';
import type { ResilientLining } from './flankingLining.ts';

/** What one element of a flanking path is made of. */
export type FlankingMake =
  { readonly kind: 'assembly'; readonly assembly: Assembly } | { readonly kind: 'measured'; readonly curve: Spectrum };

/** One of the two elements that a flanking path runs through. */
export interface FlankingSide {
  /** the part of the shell that it is, so that it follows when that part is rebuilt; null for one beyond the room */
  readonly part: string | null;
  readonly name: string;
  readonly make: FlankingMake;
  /** m² */
  readonly area: number;
  readonly lining: ResilientLining | null;
}

/** A way round the parts: along one element of the building into another. */
export interface FlankingElement {
  readonly kind: 'flanking';
  readonly junction: Junction;
  readonly run: Run;
  /** l_ij, m */
  readonly length: number;
  readonly inside: FlankingSide;
  readonly beyond: FlankingSide;
  /** the part of the shell that the path goes past; across it on the way straight on */
  readonly crossing: { readonly part: string; readonly make: FlankingMake };
  /** K_ij where it is known, dB; else it follows from the masses */
  readonly vibrationReduction: number | null;
}
