import * as v from 'valibot';
import { between, name, price, text } from './fields.ts';

const common = {
  price_per_m3: price('illustrative, per m³; used where the make-up has no price of its own'),
  source: text(500, 'where the values come from'),
};

export const boardMaterial = v.strictObject({
  kind: v.literal('board'),
  /** how the board behaves in place: decides the losses added by mounting and the treatment of heavy plates */
  family: v.optional(v.picklist(['gypsum', 'wood', 'glass', 'metal', 'mineral', 'soft', 'polymer', 'other']), 'other'),
  name,
  density_kg_m3: between(1, 25000),
  youngs_GPa: v.pipe(between(0, 1000), v.description("Young's modulus; 0 for a limp sheet")),
  poisson: between(0, 0.499),
  loss_factor: v.pipe(between(0, 2), v.description('of the material itself, without mounting')),
  ...common,
});

export const porousMaterial = v.strictObject({
  kind: v.literal('porous'),
  name,
  density_kg_m3: between(1, 500),
  flow_resistivity_Pa_s_m2: between(100, 1e6),
  ...common,
});

export const viscoelasticMaterial = v.strictObject({
  kind: v.literal('viscoelastic'),
  name,
  density_kg_m3: between(100, 5000),
  shear_modulus_MPa: v.pipe(between(0.0001, 10000), v.description('at 1 kHz')),
  loss_factor: between(0, 5),
  ...common,
});

export const materialSchema = v.variant('kind', [boardMaterial, porousMaterial, viscoelasticMaterial]);

export type MaterialEntry = v.InferOutput<typeof materialSchema>;
