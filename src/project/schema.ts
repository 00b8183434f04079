import * as v from 'valibot';

/** The project document: one room being built. All document types are inferred from this file. */

export const FORMAT = 'lullwright/project@1';

const id = v.pipe(
  v.string(),
  v.regex(/^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/, 'letters, digits, dot, dash or underscore, 1 to 64 of them'),
);
const name = v.pipe(v.string(), v.minLength(1), v.maxLength(200));
const between = (least: number, most: number) => v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));
const price = () => v.optional(between(0, 1e7));

const boardMaterial = v.strictObject({
  kind: v.literal('board'),
  family: v.optional(v.picklist(['gypsum', 'wood', 'glass', 'metal', 'mineral', 'soft', 'polymer', 'other']), 'other'),
  name,
  density_kg_m3: between(1, 25000),
  youngs_GPa: between(0, 1000),
  poisson: between(0, 0.499),
  loss_factor: between(0, 2),
  price_per_m3: price(),
  source: v.optional(v.pipe(v.string(), v.maxLength(500))),
});

const porousMaterial = v.strictObject({
  kind: v.literal('porous'),
  name,
  density_kg_m3: between(1, 500),
  flow_resistivity_Pa_s_m2: between(100, 1e6),
  price_per_m3: price(),
  source: v.optional(v.pipe(v.string(), v.maxLength(500))),
});

const viscoelasticMaterial = v.strictObject({
  kind: v.literal('viscoelastic'),
  name,
  density_kg_m3: between(100, 5000),
  shear_modulus_MPa: between(0.0001, 10000),
  loss_factor: between(0, 5),
  price_per_m3: price(),
  source: v.optional(v.pipe(v.string(), v.maxLength(500))),
});

export const materialSchema = v.variant('kind', [boardMaterial, porousMaterial, viscoelasticMaterial]);

const boardLayer = v.strictObject({ kind: v.literal('board'), material: id, thickness_mm: between(0.05, 3000) });

/** `material` may be "rigid-adhesive": the boards on both sides bend as one. */
const interlayer = v.strictObject({ kind: v.literal('interlayer'), material: id, thickness_mm: between(0, 50) });

const frame = v.strictObject({
  stud: v.picklist(['timber', 'steel', 'none']),
  arrangement: v.optional(v.picklist(['common', 'staggered', 'twin']), 'common'),
  fixing: v.optional(v.picklist(['direct', 'resilient-bar', 'isolating-clip']), 'direct'),
  spacing_mm: v.optional(between(50, 5000)),
  bar_spacing_mm: v.optional(between(50, 5000)),
  gauge_mm: v.optional(between(0.2, 10)),
});

const cavityLayer = v.strictObject({
  kind: v.literal('cavity'),
  depth_mm: between(0.5, 5000),
  fill: v.optional(v.strictObject({ material: id, thickness_mm: between(1, 5000) })),
  frame: v.optional(frame),
});

export const layerSchema = v.variant('kind', [boardLayer, interlayer, cavityLayer]);

export const assemblySchema = v.strictObject({
  name,
  layers: v.pipe(v.array(layerSchema), v.minLength(1), v.maxLength(40)),
  /** the user's own; without it the library's illustrative prices are added up */
  price_per_m2: price(),
  labour_per_m2: price(),
  note: v.optional(v.pipe(v.string(), v.maxLength(2000))),
});

/** A laboratory curve instead of an assembly: R of the part, or Dn,e of a small element (A0 = 10 m²). */
export const measuredSchema = v.strictObject({
  bands_Hz: v.pipe(v.array(between(12.5, 20000)), v.minLength(3), v.maxLength(40)),
  R_dB: v.optional(v.array(between(-40, 150))),
  Dne_dB: v.optional(v.array(between(-40, 150))),
  source: v.optional(v.pipe(v.string(), v.maxLength(500))),
});

const candidateMake = {
  assembly: v.optional(id),
  measured: v.optional(measuredSchema),
  /** a gap or hole closed and sealed for good */
  sealed: v.optional(v.literal(true)),
  width_mm: v.optional(between(0.1, 1000)),
  diameter_mm: v.optional(between(0.5, 2000)),
  depth_mm: v.optional(between(1, 3000)),
};

/** Another way to build one part: an assembly, a curve, a closed gap, or a gap of another size. */
export const candidateSchema = v.strictObject({
  id,
  name,
  ...candidateMake,
  price_per_m2: price(),
  price_each: price(),
  labour_per_m2: price(),
  labour_each: price(),
});

const placed = { x_m: v.optional(between(0, 500)), y_m: v.optional(between(0, 500)) };
const candidates = v.optional(v.pipe(v.array(candidateSchema), v.maxLength(20)));
/** What the part cost or will cost, by area or as a piece; both are added where both are given. */
const priced = { price_per_m2: price(), price_each: price(), labour_per_m2: price(), labour_each: price() };

const panelOpening = v.strictObject({
  id,
  name,
  kind: v.picklist(['door', 'window', 'vent', 'service']),
  width_m: between(0.005, 50),
  height_m: between(0.005, 50),
  assembly: v.optional(id),
  measured: v.optional(measuredSchema),
  ...placed,
  ...priced,
  candidates,
});

const slitOpening = v.strictObject({
  id,
  name,
  kind: v.literal('slit'),
  length_mm: between(1, 50000),
  width_mm: between(0.1, 1000),
  depth_mm: between(1, 3000),
  /** along the edge of a surface (twice the power) rather than in its middle */
  edge: v.optional(v.boolean()),
  sealed: v.optional(v.literal(true)),
  ...placed,
  ...priced,
  candidates,
});

const holeOpening = v.strictObject({
  id,
  name,
  kind: v.literal('hole'),
  diameter_mm: between(0.5, 2000),
  depth_mm: between(1, 3000),
  sealed: v.optional(v.literal(true)),
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
  assembly: v.optional(id),
  measured: v.optional(measuredSchema),
  /** side of the net on which a wall is folded out, seen from above with north up */
  side: v.optional(v.picklist(['north', 'east', 'south', 'west'])),
  openings: v.optional(v.pipe(v.array(openingSchema), v.maxLength(100))),
  ...priced,
  candidates,
});

export const optionSchema = v.strictObject({ id, name, swaps: v.record(id, id) });

export const projectSchema = v.strictObject({
  format: v.literal(FORMAT),
  name,
  note: v.optional(v.pipe(v.string(), v.maxLength(20000))),
  materials: v.optional(v.record(id, materialSchema)),
  assemblies: v.record(id, assemblySchema),
  surfaces: v.pipe(v.array(surfaceSchema), v.maxLength(60)),
  /** named sets of swaps tried beside the build as it is */
  options: v.optional(v.pipe(v.array(optionSchema), v.maxLength(20))),
  /** spectrum by which shares are weighed; flat when absent */
  source: v.optional(id),
  /** letters printed before prices */
  currency: v.optional(v.pipe(v.string(), v.maxLength(8))),
  /** assemblies laid side by side in Make up */
  compare: v.optional(v.pipe(v.array(id), v.maxLength(4))),
});

export type Project = v.InferOutput<typeof projectSchema>;
export type MaterialEntry = v.InferOutput<typeof materialSchema>;
export type AssemblyEntry = v.InferOutput<typeof assemblySchema>;
export type LayerEntry = v.InferOutput<typeof layerSchema>;
export type BoardLayerEntry = Extract<LayerEntry, { kind: 'board' }>;
export type CavityLayerEntry = Extract<LayerEntry, { kind: 'cavity' }>;
export type FrameEntry = NonNullable<CavityLayerEntry['frame']>;
export type MeasuredEntry = v.InferOutput<typeof measuredSchema>;
export type CandidateEntry = v.InferOutput<typeof candidateSchema>;
export type OpeningEntry = v.InferOutput<typeof openingSchema>;
export type SurfaceEntry = v.InferOutput<typeof surfaceSchema>;
export type OptionEntry = v.InferOutput<typeof optionSchema>;
