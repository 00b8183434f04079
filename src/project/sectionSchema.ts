import * as v from 'valibot';
import { between } from './fields.ts';

/** Clear cross-section of a duct, grille or fan. */
export const sectionSchema = v.variant('shape', [
  v.strictObject({ shape: v.literal('round'), diameter_mm: between(20, 1000) }),
  v.strictObject({ shape: v.literal('rectangular'), width_mm: between(10, 2000), height_mm: between(10, 2000) }),
]);

export type SectionEntry = v.InferOutput<typeof sectionSchema>;
