import type { BoardMaterial, PorousMaterial, ViscoelasticMaterial } from '../materials/index.ts';

/** One board, sheet, pane or masonry layer; thickness in m. */
export interface BoardLayer {
  readonly kind: 'board';
  readonly material: BoardMaterial;
  readonly thickness: number;
}

/** What joins two boards of one leaf: a viscoelastic sheet (constrained-layer damping) or a rigid bond. */
export interface Interlayer {
  readonly kind: 'interlayer';
  readonly material: ViscoelasticMaterial | 'rigid';
  readonly thickness: number;
}

/** The studs, bars or clips that join the two leaves of a cavity; spacings and gauge in m. */
export interface Frame {
  readonly stud: 'timber' | 'steel' | 'none';
  readonly arrangement: 'common' | 'staggered' | 'twin';
  readonly fixing: 'direct' | 'resilient-bar' | 'isolating-clip';
  readonly spacing: number;
  readonly barSpacing: number;
  readonly gauge: number;
}

/** The space between two leaves; depth is the clear distance, bars and clips included (m). */
export interface CavityLayer {
  readonly kind: 'cavity';
  readonly depth: number;
  readonly fill?: { readonly material: PorousMaterial | BoardMaterial; readonly thickness: number };
  readonly frame?: Frame;
}

export type Layer = BoardLayer | Interlayer | CavityLayer;

/** Layers from the music room outwards. */
export interface Assembly {
  readonly name: string;
  readonly layers: readonly Layer[];
}
