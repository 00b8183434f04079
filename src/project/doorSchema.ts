import * as v from 'valibot';
import { between, id, optionalBetween } from './fields.ts';

/** What a door, window or service panel has besides its leaf. */

/** Gaps of joints without a seal and holes for services where the document does not say, mm. */
export const FITTING_DEFAULTS = {
  gap_mm: 3,
  threshold_gap_mm: 6,
  hole_mm: { cable: 20, pipe: 35 },
  through_mm: { cable: 10, pipe: 22 },
} as const;

const perimeter = v.picklist(['none', 'brush', 'foam', 'compression', 'double-compression', 'magnetic']);
const threshold = v.picklist([
  'none',
  'brush',
  'foam',
  'compression',
  'double-compression',
  'magnetic',
  'drop',
  'double-drop',
]);

export const sealsSchema = v.strictObject({
  perimeter: v.pipe(perimeter, v.description('sides and head')),
  threshold: v.pipe(threshold, v.description('below: drop seals come down when the door closes')),
  gap_mm: optionalBetween(0.1, 50, 'open joint at sides and head without a seal; 3 where it is not given'),
  threshold_gap_mm: optionalBetween(0.1, 100, 'open joint below without a seal; 6 where it is not given'),
});

export const serviceItemSchema = v.strictObject({
  kind: v.picklist(['socket-back-to-back', 'socket-recessed', 'socket-surface', 'cable', 'pipe', 'recessed-light']),
  count: v.pipe(between(1, 200), v.integer('a whole number')),
  sealed: v.optional(
    v.pipe(v.boolean(), v.description('airtight box or putty pad; mastic round a cable or pipe')),
    false,
  ),
  hole_mm: optionalBetween(1, 500, 'hole for a cable or pipe; 20 and 35 where it is not given'),
  through_mm: optionalBetween(0, 500, 'what goes through it; 10 and 22 where it is not given'),
});

/** Keys of panel openings; which kind may have which is checked by the rules. */
export const fittings = {
  seals: v.optional(sealsSchema),
  keyhole: v.optional(v.boolean()),
  letter_plate: v.optional(v.picklist(['plain', 'double'])),
  second: v.optional(
    v.pipe(
      v.strictObject({
        assembly: id,
        gap_mm: v.pipe(between(5, 5000), v.description('clear between the two leaves')),
        lined: v.optional(v.pipe(v.boolean(), v.description('absorber round the reveal')), false),
        seals: v.optional(sealsSchema),
      }),
      v.description('a second door or pane behind the first, in its own frame'),
    ),
  ),
  items: v.optional(v.pipe(v.array(serviceItemSchema), v.maxLength(30), v.description('led through or let in'))),
};

export type SealsEntry = v.InferOutput<typeof sealsSchema>;

/** What a new door usually comes with: a foam strip round the frame, a brush below. @source common practice */
export const ORDINARY_SEALS: SealsEntry = { perimeter: 'foam', threshold: 'brush' };
export type ServiceItemEntry = v.InferOutput<typeof serviceItemSchema>;
