import * as v from 'valibot';
import { between } from './fields.ts';

/** Figures of the whole room that a target can be set for. */
export const TARGET_RATINGS = ['Rw', 'Rw_plus_C50_5000', 'STC', 'bass'] as const;

/** What the whole room is to reach at least. */
export const targetSchema = v.strictObject({
  rating: v.pipe(
    v.picklist(TARGET_RATINGS),
    v.description('Rw, Rw + C50-5000, STC, or the bass figure: energy mean of R over 50 to 100 Hz'),
  ),
  value_dB: between(0, 120),
});

export type TargetEntry = v.InferOutput<typeof targetSchema>;
