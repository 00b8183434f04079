import * as v from 'valibot';
import { between, id, name, optionalBetween } from './fields.ts';

/** A floating floor or lining on a heavy element: mass on a resilient layer. */
const liningSchema = v.strictObject({
  mass_kg_m2: v.pipe(between(1, 1000), v.description('of what lies on the resilient layer')),
  stiffness_MN_m3: v.pipe(between(0.2, 1000), v.description("dynamic stiffness s' of the resilient layer")),
});

/** One of the two elements that sound runs through: a surface of the room, or a make-up beyond it. */
const endSchema = v.strictObject({
  surface: v.optional(id),
  assembly: v.optional(id),
  area_m2: optionalBetween(0.1, 5000, 'of the element; that of the surface, or 10 where there is none'),
  lining: v.optional(
    v.pipe(liningSchema, v.description('on the element besides its own layers, as a floating floor is')),
  ),
});

/** A way round the parts: an element of the building that runs on past one of the room's surfaces. */
export const flankingSchema = v.strictObject({
  id,
  name,
  kind: v.picklist(['slab-through', 'soffit-through', 'wall-into-building']),
  past: v.pipe(id, v.description('surface of the room that the sound goes past')),
  inside: endSchema,
  beyond: endSchema,
  junction: v.pipe(
    v.picklist(['rigid-cross', 'rigid-t', 'flexible-t', 'lightweight']),
    v.description('how the elements meet, after EN 12354-1:2000, annex E'),
  ),
  run: v.pipe(
    v.picklist(['straight', 'corner']),
    v.description('on through the junction, or from one element into the one across it'),
  ),
  length_m: v.pipe(between(0.05, 200), v.description('of the junction')),
  vibration_reduction_dB: optionalBetween(-10, 80, 'K where it is known; it follows from the masses where not given'),
});

export type FlankingEntry = v.InferOutput<typeof flankingSchema>;
export type FlankingEnd = v.InferOutput<typeof endSchema>;
