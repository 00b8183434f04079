import * as v from 'valibot';
import { fittings } from './doorSchema.ts';
import { between, id, name, optionalBetween, priced, text } from './fields.ts';

/** A laboratory curve instead of an assembly: R of the part, or Dn,e of a small element (A0 = 10 m²). */
export const measuredSchema = v.strictObject({
  bands_Hz: v.pipe(v.array(between(12.5, 20000)), v.minLength(3), v.maxLength(40)),
  R_dB: v.optional(v.array(between(-40, 150))),
  Dne_dB: v.optional(v.array(between(-40, 150))),
  source: text(500, 'whose report, which test'),
});

const make = { assembly: v.optional(id), measured: v.optional(measuredSchema) };
const path = v.optional(v.pipe(id, v.description('a vent: the id of one under "vents"')));
const sealed = v.optional(v.pipe(v.literal(true), v.description('closed and sealed for good')));
const gap = { width_mm: between(0.1, 1000), diameter_mm: between(0.5, 2000), depth_mm: between(1, 3000) };

/** Another way to build one part: an assembly, a curve, a closed gap, or a gap of another size. */
export const candidateSchema = v.strictObject({
  id,
  name,
  ...make,
  path,
  sealed,
  fittings: v.optional(
    v.pipe(
      v.strictObject(fittings),
      v.description(
        "joints, holes, second leaf and services in place of the part's own; those stay where it is absent",
      ),
    ),
  ),
  width_mm: v.optional(gap.width_mm),
  diameter_mm: v.optional(gap.diameter_mm),
  depth_mm: v.optional(gap.depth_mm),
  ...priced,
});

const placed = {
  x_m: optionalBetween(0, 500, "from the surface's left edge, seen from inside"),
  y_m: optionalBetween(0, 500, "from the surface's lower edge"),
};
const candidates = v.optional(v.pipe(v.array(candidateSchema), v.maxLength(20)));

const panelOpening = v.strictObject({
  id,
  name,
  kind: v.picklist(['door', 'window', 'vent', 'service']),
  width_m: between(0.005, 50),
  height_m: between(0.005, 50),
  ...make,
  path,
  ...fittings,
  ...placed,
  ...priced,
  candidates,
});

const slitOpening = v.strictObject({
  id,
  name,
  kind: v.literal('slit'),
  length_mm: between(1, 50000),
  width_mm: gap.width_mm,
  depth_mm: gap.depth_mm,
  edge: v.optional(
    v.pipe(v.boolean(), v.description('along the edge of a surface (twice the power) rather than in its middle')),
  ),
  sealed,
  ...placed,
  ...priced,
  candidates,
});

const holeOpening = v.strictObject({
  id,
  name,
  kind: v.literal('hole'),
  diameter_mm: gap.diameter_mm,
  depth_mm: gap.depth_mm,
  sealed,
  ...placed,
  ...priced,
  candidates,
});

export const openingSchema = v.variant('kind', [panelOpening, slitOpening, holeOpening]);

export const surfaceSchema = v.strictObject({
  id,
  name,
  kind: v.picklist(['wall', 'roof', 'ceiling', 'floor']),
  width_m: between(0.1, 200),
  height_m: between(0.1, 200),
  ...make,
  /** side of the net on which a wall is folded out, seen from above with north up */
  side: v.optional(v.picklist(['north', 'east', 'south', 'west'])),
  openings: v.optional(v.pipe(v.array(openingSchema), v.maxLength(100))),
  ...priced,
  candidates,
});

export type MeasuredEntry = v.InferOutput<typeof measuredSchema>;
export type CandidateEntry = v.InferOutput<typeof candidateSchema>;
export type OpeningEntry = v.InferOutput<typeof openingSchema>;
export type SurfaceEntry = v.InferOutput<typeof surfaceSchema>;
