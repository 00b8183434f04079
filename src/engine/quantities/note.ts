/** One number that convinces, with its unit and what it is. */
export interface NoteFigure {
  readonly term: string;
  readonly value: number;
  readonly unit: string;
}

/**
 * What the physics raises about an assembly or a shell, in words and figures.
 * `mistake` costs sound reduction and is worth changing; `hint` is worth knowing; `caution` can hurt someone.
 * `about` names what it concerns: an assembly or part id, and the layer indices within it.
 */
export interface Note {
  readonly code: NoteCode;
  readonly severity: 'mistake' | 'hint' | 'caution';
  readonly sentence: string;
  readonly figures: readonly NoteFigure[];
  readonly about: { readonly part?: string; readonly assembly?: string; readonly layers?: readonly number[] };
  /** A change that removes the fault: replace the assembly's layers by this order. Indices into the present layers. */
  readonly remedy?: Remedy;
}

export type NoteCode =
  | 'resonance-in-music'
  | 'shared-coincidence'
  | 'third-leaf'
  | 'thin-lining'
  | 'short-circuited-bars'
  | 'cavity-without-absorber'
  | 'closed-cell-fill'
  | 'light-layer'
  | 'part-caps-whole'
  | 'open-gap'
  | 'weak-roof'
  | 'value-assumed'
  | 'outside-validity'
  | 'load-overhead'
  | 'no-way-for-air'
  | 'too-little-air'
  | 'carbon-dioxide'
  | 'fan-must-run'
  | 'air-too-fast'
  | 'too-warm'
  | 'condensation'
  | 'no-combustion'
  | 'bare-vent'
  | 'weak-casing'
  | 'thin-partitions'
  | 'vent-costs-wall'
  | 'vent-bass'
  | 'foam-lining'
  | 'fan-heard';

/** How to rebuild the assembly without the fault; the project wing turns it into a new layup. */
export type Remedy =
  | { readonly kind: 'reorder'; readonly label: string; readonly layers: readonly RemedyLayer[] }
  | { readonly kind: 'fill-cavity'; readonly label: string; readonly cavity: number }
  | { readonly kind: 'thicken'; readonly label: string; readonly layer: number; readonly thickness: number }
  | { readonly kind: 'deepen'; readonly label: string; readonly cavity: number; readonly depth: number };

/**
 * A layer kept from the present assembly (`keep`), with a new depth (m) where given. `arrangement` is given where the
 * frame of a kept cavity no longer reaches both leaves and each leaf stands on its own.
 */
export interface RemedyLayer {
  readonly keep: number;
  readonly depth?: number;
  readonly arrangement?: 'twin';
}
