import * as v from 'valibot';
import { between, name, optionalBetween } from './fields.ts';

/** What is assumed about the air where the document does not say. */
export const AIR_DEFAULTS = {
  target_ppm: 1000,
  outdoor_ppm: 420,
  fresh_air_L_s_person: 8,
  n50_per_h: 0,
  room_C: 21,
  outdoor_C: 5,
  outdoor_humidity_percent: 80,
  height_between_vents_m: 0,
  wind_m_s: 0,
  wind_on: 'supply',
  equipment_W: 0,
  most_rise_K: 5,
  reverberation_s: 0.4,
} as const;

const people = v.strictObject({
  name,
  count: v.pipe(between(0, 200), v.integer('a whole number')),
  activity: v.picklist(['listening', 'playing-seated', 'playing-standing', 'drumming', 'dancing']),
  sex: v.optional(v.picklist(['male', 'female'])),
  age: v.optional(v.picklist(['11-16', '16-21', '21-30', '30-40', '40-50', '50-60', '60-70'])),
});

const step = v.strictObject({
  name,
  minutes: between(1, 1440),
  people_percent: optionalBetween(0, 100, 'of the people who are in the room; all where it is not given'),
  door: v.optional(v.picklist(['closed', 'open']), 'closed'),
  fan: v.optional(v.pipe(v.boolean(), v.description('whether fans run')), true),
});

/** People, session and climate of the music room. */
export const airSchema = v.strictObject({
  volume_m3: optionalBetween(1, 100000, 'of the room; from floor and walls where it is not given'),
  people: v.optional(v.pipe(v.array(people), v.maxLength(20))),
  session: v.optional(v.pipe(v.array(step), v.maxLength(40), v.description('two hours of playing where not given'))),
  target_ppm: optionalBetween(500, 5000, 'CO2 not to be passed; 1000 where it is not given'),
  outdoor_ppm: optionalBetween(300, 800, 'CO2 outdoors; 420 where it is not given'),
  fresh_air_L_s_person: optionalBetween(1, 40, 'fresh air to plan with; 8 where it is not given'),
  n50_per_h: optionalBetween(0, 50, 'air changes at 50 Pa; 0, a sealed shell, where it is not given'),
  room_C: optionalBetween(5, 40, '21 where it is not given'),
  outdoor_C: optionalBetween(-30, 45, '5 where it is not given'),
  outdoor_humidity_percent: optionalBetween(1, 100, '80 where it is not given'),
  height_between_vents_m: optionalBetween(
    -30,
    30,
    'how far the outlet of the used air lies above the inlet of the fresh air; 0 where it is not given',
  ),
  wind_m_s: optionalBetween(0, 30, 'wind to reckon with; 0 where it is not given'),
  wind_on: v.optional(
    v.pipe(v.picklist(['supply', 'extract']), v.description('vent that faces the wind; supply where it is not given')),
  ),
  equipment_W: optionalBetween(0, 100000, 'heat of amplifiers, lamps and the like; 0 where it is not given'),
  most_rise_K: optionalBetween(0.5, 30, 'warming over outdoor air that is accepted; 5 where it is not given'),
  reverberation_s: optionalBetween(0.05, 10, 'of the room, for the noise of vents; 0.4 where it is not given'),
});

export type AirEntry = v.InferOutput<typeof airSchema>;
