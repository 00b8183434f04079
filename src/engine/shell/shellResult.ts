import type { Note } from '../quantities/index.ts';
import type { Ratings } from '../ratings/index.ts';
import type { PartKind } from './part.ts';
import type { PieceResult } from './pieceResult.ts';

/** What the whole shell would be if one part changed. */
export interface WhatIf {
  readonly R: readonly number[];
  readonly ratings: Ratings;
  /** gain of Rw, whole dB; null where a rating is missing */
  readonly RwGain: number | null;
  /** gain of the energy mean of R over 50, 63, 80, 100 Hz, dB */
  readonly bassGain: number;
}

export interface PartResult {
  readonly id: string;
  readonly name: string;
  readonly kind: PartKind;
  readonly surface: string;
  /** own area; of a flanking path the area it goes past, which its R is written for, m² */
  readonly area: number;
  /** R of the part on its own area, dB per band; of an opening it may be negative */
  readonly R: readonly number[];
  /** of a part made of an assembly or curve; null for slits, holes and sealed parts */
  readonly ratings: Ratings | null;
  /** share of the energy that gets out, 0 to 1, for the chosen source over 50 Hz to 5 kHz */
  readonly share: number;
  /** share in each band, 0 to 1 */
  readonly shareByBand: readonly number[];
  readonly ifPerfect: WhatIf;
  /** R 3 dB higher in each band: half the energy through this part */
  readonly ifTwiceAsGood: WhatIf;
  readonly surfaceMass: number | null;
  readonly thickness: number | null;
  /** ways that add up to what the part lets through; only of vents with a path and of panels with fittings */
  readonly ways?: readonly { readonly name: string; readonly openArea: readonly number[] }[];
  /** leaves, joints, locks and services of a panel with fittings */
  readonly pieces?: readonly PieceResult[];
}

export interface ShellResult {
  readonly bands: readonly number[];
  readonly R: readonly number[];
  readonly spread: readonly number[];
  readonly extrapolated: readonly (string | null)[];
  readonly ratings: Ratings;
  readonly ratingSpread: number;
  /** energy mean of R over 50, 63, 80 and 100 Hz, dB: the bass figure that stands beside every rating */
  readonly bassR: number;
  readonly area: number;
  /** sorted by share, largest first */
  readonly parts: readonly PartResult[];
  /** id of the part with the largest share; null where nothing gets out */
  readonly limiting: string | null;
  readonly notes: readonly Note[];
}
