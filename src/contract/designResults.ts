import * as v from 'valibot';

/** What `designVents` answers; units stand in the keys. */

const box = v.strictObject({
  duct_diameter_mm: v.number(),
  length_m: v.number(),
  width_m: v.number(),
  height_m: v.number(),
  partitions: v.number(),
  gap_mm: v.number(),
  lining_mm: v.number(),
});

const design = v.strictObject({
  opening: v.string(),
  name: v.string(),
  flow_L_s: v.number(),
  /** whether it costs the wall no more than asked; otherwise the nearest that was found */
  found: v.boolean(),
  /** inside; null where no box of the grid carries the air quietly */
  box: v.nullable(box),
  loss_Pa: v.number(),
  speed_m_s: v.number(),
  cost_dB: v.number(),
  Dnew_dB: v.nullable(v.number()),
});

export const designParams = {
  /** what the vents of a wall together may cost it, dB A-weighted over 100 Hz to 3.15 kHz */
  most_cost_dB: v.optional(v.pipe(v.number(), v.minValue(0.1), v.maxValue(20)), 1),
};

export const designResult = v.strictObject({ most_cost_dB: v.number(), designs: v.array(design) });
