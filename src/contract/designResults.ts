import * as v from 'valibot';
import { assemblySchema, ventSchema } from '../project/schema.ts';

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
  /** alike: one in the room, the second outside */
  boxes: v.number(),
  /** behind the box in the room; 0: none */
  lined_duct_m: v.number(),
  casing: v.nullable(v.string()),
  volume_m3: v.number(),
  /** of each box, without lining */
  weight_kg: v.number(),
  /** of the best of one box, where the nearest has two and none is enough */
  cost_of_one_box_dB: v.nullable(v.number()),
  loss_Pa: v.number(),
  speed_m_s: v.number(),
  /** with the fans standing, of all such vents of the wall, as asked */
  cost_dB: v.number(),
  /** of this vent alone as `breathe` tells it once it is put in, from 100 Hz on, fans running */
  cost_in_place_dB: v.nullable(v.number()),
  Dnew_dB: v.nullable(v.number()),
  /** what each kind of way would cost by itself, the worst first */
  limits: v.array(v.strictObject({ way: v.string(), cost_dB: v.number() })),
  /** third octaves by which half of it passes */
  bands_Hz: v.array(v.number()),
  /** 50 to 160 Hz: where it is worst against the open hole; negative: it lets more through than the hole */
  worst_bass: v.nullable(v.strictObject({ band_Hz: v.number(), insertion_loss_dB: v.number() })),
  /** what joints would cost if the boxes let nothing through */
  floor_dB: v.nullable(v.number()),
  /**
   * ways to build it, those that carry the air, different boxes among them, boxes solved at 20 mm (at
   * least up to 400 Hz), of them in all bands, and finely */
  tried: v.strictObject({
    all: v.number(),
    airy: v.number(),
    boxes: v.number(),
    coarse: v.number(),
    whole: v.number(),
    fine: v.number(),
  }),
  /** to be put into "vents" and "assemblies" of the project */
  vent: v.nullable(ventSchema),
  assemblies: v.record(v.string(), assemblySchema),
});

export const designParams = {
  /** what the vents of a wall together may cost it, dB A-weighted */
  most_cost_dB: v.optional(v.pipe(v.number(), v.minValue(0.1), v.maxValue(20)), 1),
  /** false: living noise over 100 Hz to 3.15 kHz; true: music rich in bass over 50 Hz to 3.15 kHz */
  bass: v.optional(v.boolean(), false),
};

export const designResult = v.strictObject({
  most_cost_dB: v.number(),
  bass: v.boolean(),
  designs: v.array(design),
});
