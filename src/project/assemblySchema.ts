import * as v from 'valibot';
import { between, id, name, optionalBetween, price, text } from './fields.ts';

/** Interlayer "material" that bonds the boards on its two sides, so that they bend as one. */
export const RIGID_ADHESIVE = 'rigid-adhesive';

/** What a frame has where the document does not say, mm. */
export const FRAME_DEFAULTS = { spacing_mm: 600, bar_spacing_mm: 600, gauge_mm: 0.5 } as const;

const boardLayer = v.strictObject({ kind: v.literal('board'), material: id, thickness_mm: between(0.05, 3000) });

const interlayer = v.strictObject({
  kind: v.literal('interlayer'),
  material: v.pipe(
    id,
    v.description('a viscoelastic material, or rigid-adhesive: the boards on both sides bend as one'),
  ),
  thickness_mm: between(0, 50),
});

const frame = v.strictObject({
  stud: v.picklist(['timber', 'steel', 'none']),
  arrangement: v.optional(v.picklist(['common', 'staggered', 'twin']), 'common'),
  fixing: v.optional(v.picklist(['direct', 'resilient-bar', 'isolating-clip']), 'direct'),
  spacing_mm: optionalBetween(50, 5000, 'between the centres of studs; 600 where it is not given'),
  bar_spacing_mm: optionalBetween(50, 5000, 'between bars or rows of clips; 600 where it is not given'),
  gauge_mm: optionalBetween(0.2, 10, 'thickness of the metal of steel studs; 0.5 where it is not given'),
});

const cavityLayer = v.strictObject({
  kind: v.literal('cavity'),
  depth_mm: v.pipe(between(0.5, 5000), v.description('clear distance between the two leaves, bars and clips included')),
  fill: v.optional(v.strictObject({ material: id, thickness_mm: between(0.5, 5000) })),
  frame: v.optional(frame),
});

export const layerSchema = v.variant('kind', [boardLayer, interlayer, cavityLayer]);

export const assemblySchema = v.strictObject({
  name,
  layers: v.pipe(
    v.array(layerSchema),
    v.minLength(1),
    v.maxLength(40),
    v.description('from the music room outwards; two boards without an interlayer are screwed and bend independently'),
  ),
  price_per_m2: price('material; without it the illustrative prices of the layers are added up'),
  labour_per_m2: price('work, per m²'),
  note: text(2000, 'for oneself'),
});

export type AssemblyEntry = v.InferOutput<typeof assemblySchema>;
export type LayerEntry = v.InferOutput<typeof layerSchema>;
export type BoardLayerEntry = Extract<LayerEntry, { kind: 'board' }>;
export type InterlayerEntry = Extract<LayerEntry, { kind: 'interlayer' }>;
export type CavityLayerEntry = Extract<LayerEntry, { kind: 'cavity' }>;
export type FrameEntry = NonNullable<CavityLayerEntry['frame']>;
