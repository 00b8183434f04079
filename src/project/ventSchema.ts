import * as v from 'valibot';
import { between, id, name, optionalBetween, text } from './fields.ts';
import { sectionSchema } from './sectionSchema.ts';

/** Vents, piece by piece from the music room outwards. */

/** What pieces have where the document does not say. */
export const VENT_DEFAULTS = {
  grille_free_percent: 60,
  mesh_free_percent: 60,
  cowl_loss: 1.5,
  partition_thickness_mm: 12,
  /** walls of ducts, kg/m²: sheet steel 0.5 mm, board, foil; and of a box of 18 mm board */
  wall_kg_m2: { smooth: 4, flexible: 0.5, box: 12 },
} as const;

const section = sectionSchema;
const called = v.optional(v.pipe(name, v.description('for oneself; without it the kind of piece is its name')));
const lining = v.strictObject({
  material: v.pipe(id, v.description('a porous material')),
  thickness_mm: between(5, 300),
});
const place = (usual: 'inside' | 'wall') =>
  v.optional(
    v.pipe(
      v.picklist(['inside', 'wall', 'outside']),
      v.description('stands in the music room, in the wall, or beyond it: walls that stand free let sound in or out'),
    ),
    usual,
  );
const walls = {
  casing: v.optional(v.pipe(id, v.description('assembly of its walls, from inside the music room'))),
  wall_kg_m2: optionalBetween(0.1, 500, 'mass of its walls, where no assembly is named'),
};

const pieces = {
  grille: v.strictObject({
    kind: v.literal('grille'),
    name: called,
    section,
    free_percent: optionalBetween(5, 100, 'open share of its face; 60 where it is not given'),
  }),
  mesh: v.strictObject({
    kind: v.literal('mesh'),
    name: called,
    section,
    free_percent: optionalBetween(5, 100, 'open share of its face; 60 where it is not given'),
  }),
  duct: v.strictObject({
    kind: v.literal('duct'),
    name: called,
    section: v.pipe(section, v.description('clear, inside the lining')),
    length_m: between(0.01, 30),
    type: v.optional(v.picklist(['smooth', 'flexible']), 'smooth'),
    pulled: v.optional(
      v.pipe(
        v.picklist(['straight', 'slack', 'squeezed']),
        v.description('flexible duct: slack costs four times the pressure, squeezed ten times'),
      ),
      'straight',
    ),
    lining: v.optional(lining),
    place: place('wall'),
    ...walls,
  }),
  bend: v.strictObject({
    kind: v.literal('bend'),
    name: called,
    section,
    angle_deg: v.optional(between(5, 180), 90),
    form: v.optional(
      v.pipe(
        v.picklist(['mitred', 'vaned', 'tight', 'smooth']),
        v.description('sharp, sharp with vanes, curved tighter than the duct is wide, curved wider'),
      ),
      'mitred',
    ),
    lining: v.optional(lining),
  }),
  transition: v.strictObject({ kind: v.literal('transition'), name: called, length_m: between(0.01, 5) }),
  box: v.strictObject({
    kind: v.literal('box'),
    name: called,
    length_m: between(0.05, 6),
    width_m: between(0.05, 3),
    height_m: between(0.02, 1.5),
    partitions: v.pipe(
      v.array(
        v.strictObject({
          at_m: v.pipe(between(0.01, 6), v.description('its left face, from the left end')),
          gap_mm: v.pipe(between(10, 3000), v.description('clear way past its tip, inside the lining')),
          side: v.pipe(v.picklist(['near', 'far']), v.description('where the way past it lies; near: low in the plan')),
          thickness_mm: optionalBetween(1, 200, '12 where it is not given'),
        }),
      ),
      v.maxLength(12),
    ),
    lining: v.optional(
      v.strictObject({
        ...lining.entries,
        faces: v.optional(v.pipe(v.boolean(), v.description('also on the two flat faces')), false),
      }),
    ),
    ports: v.pipe(
      v.array(
        v.strictObject({
          side: v.picklist(['left', 'right', 'near', 'far', 'face']),
          at_m: v.pipe(between(0, 6), v.description('middle of the duct along its side; on a face from the left')),
          across_m: optionalBetween(0, 3, 'on a face: middle of the duct from the near side'),
          section,
        }),
      ),
      v.length(2),
      v.description('towards the room, then outwards'),
    ),
    place: place('inside'),
    ...walls,
  }),
  fan: v.strictObject({
    kind: v.literal('fan'),
    name: called,
    section,
    curve: v.pipe(
      v.array(v.strictObject({ flow_L_s: between(0, 5000), pressure_Pa: between(0, 5000) })),
      v.minLength(2),
      v.maxLength(30),
      v.description('points of its data sheet, flow ascending'),
    ),
    sound_power_dB: v.optional(
      v.pipe(
        v.array(between(-20, 140)),
        v.length(8),
        v.description('octaves 63 Hz to 8 kHz; estimated from flow and pressure where not given'),
      ),
    ),
    type: v.optional(v.picklist(['axial', 'backward', 'forward', 'radial']), 'backward'),
  }),
  cowl: v.strictObject({
    kind: v.literal('cowl'),
    name: called,
    section,
    loss: optionalBetween(0, 50, 'loss coefficient on the speed in its section; 1.5 where it is not given'),
  }),
};

export const ventElementSchema = v.variant('kind', [
  pieces.grille,
  pieces.mesh,
  pieces.duct,
  pieces.bend,
  pieces.transition,
  pieces.box,
  pieces.fan,
  pieces.cowl,
]);

export const ventSchema = v.strictObject({
  id,
  name,
  opening: v.pipe(id, v.description('the vent opening in a surface that it belongs to')),
  direction: v.picklist(['supply', 'extract']),
  elements: v.pipe(
    v.array(ventElementSchema),
    v.minLength(1),
    v.maxLength(30),
    v.description('from the music room outwards, whichever way the air flows'),
  ),
  note: text(2000, 'for oneself'),
});

export type VentEntry = v.InferOutput<typeof ventSchema>;
export type VentElementEntry = v.InferOutput<typeof ventElementSchema>;
