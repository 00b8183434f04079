import * as v from 'valibot';
import { airSchema } from './airSchema.ts';
import { assemblySchema } from './assemblySchema.ts';
import { id, name, text } from './fields.ts';
import { flankingSchema } from './flankingSchema.ts';
import { materialSchema } from './materialSchema.ts';
import { surfaceSchema } from './partSchema.ts';
import { targetSchema } from './targetSchema.ts';
import { ventSchema } from './ventSchema.ts';
import { workmanshipSchema } from './workmanshipSchema.ts';

/** The project document: one room being built. All document types are inferred from its schemas. */

export const FORMAT_VERSION = 1;
export const FORMAT = 'lullwright/project@1';

export const optionSchema = v.strictObject({
  id,
  name,
  swaps: v.pipe(v.record(id, id), v.description('part id to the id of one of its candidates')),
});

export const projectSchema = v.strictObject({
  format: v.literal(FORMAT),
  name,
  note: text(20000, 'for oneself'),
  materials: v.optional(
    v.pipe(v.record(id, materialSchema), v.description('only what is not in the library, or differs from it')),
  ),
  assemblies: v.record(id, assemblySchema),
  surfaces: v.optional(
    v.pipe(v.array(surfaceSchema), v.maxLength(60), v.description('none where only make-ups are to be predicted')),
    [],
  ),
  flanking: v.optional(
    v.pipe(
      v.array(flankingSchema),
      v.maxLength(40),
      v.description('ways along the building past the surfaces; none where the room stands by itself'),
    ),
  ),
  vents: v.optional(v.pipe(v.array(ventSchema), v.maxLength(20), v.description('piece by piece, for vent openings'))),
  air: v.optional(v.pipe(airSchema, v.description('people, session and climate'))),
  options: v.optional(
    v.pipe(
      v.array(optionSchema),
      v.maxLength(20),
      v.description('named sets of swaps, tried beside the build as it is'),
    ),
  ),
  source: v.optional(v.pipe(id, v.description('spectrum by which shares are weighed; flat where it is not given'))),
  target: v.optional(v.pipe(targetSchema, v.description('what the whole room is to reach at least'))),
  workmanship: v.optional(
    v.pipe(workmanshipSchema, v.description('how well the room is put together: what no drawing shows')),
  ),
  currency: v.optional(v.pipe(v.string(), v.maxLength(8), v.description('letters printed before prices'))),
  compare: v.optional(v.pipe(v.array(id), v.maxLength(4), v.description('assemblies laid side by side'))),
});

export type Project = v.InferOutput<typeof projectSchema>;
export type OptionEntry = v.InferOutput<typeof optionSchema>;

export { flankingSchema, type FlankingEnd, type FlankingEntry } from './flankingSchema.ts';
export { materialSchema, type MaterialEntry } from './materialSchema.ts';
export {
  assemblySchema,
  FRAME_DEFAULTS,
  layerSchema,
  RIGID_ADHESIVE,
  type AssemblyEntry,
  type BoardLayerEntry,
  type CavityLayerEntry,
  type FrameEntry,
  type InterlayerEntry,
  type LayerEntry,
} from './assemblySchema.ts';
export {
  candidateSchema,
  measuredSchema,
  openingSchema,
  surfaceSchema,
  type CandidateEntry,
  type MeasuredEntry,
  type OpeningEntry,
  type SurfaceEntry,
} from './partSchema.ts';
export { TARGET_RATINGS, targetSchema, type TargetEntry } from './targetSchema.ts';
export { CARE_LEVELS, DAMP_LEVELS, workmanshipSchema, type WorkmanshipEntry } from './workmanshipSchema.ts';
export { AIR_DEFAULTS, airSchema, type AirEntry } from './airSchema.ts';
export { FITTING_DEFAULTS, ORDINARY_SEALS, type SealsEntry, type ServiceItemEntry } from './doorSchema.ts';
export { type SectionEntry } from './sectionSchema.ts';
export { VENT_DEFAULTS, ventElementSchema, ventSchema, type VentElementEntry, type VentEntry } from './ventSchema.ts';
