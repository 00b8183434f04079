import * as v from 'valibot';

/** What `breathe` answers; units stand in the keys. Curves are third octaves 25 Hz to 10 kHz, noise is in octaves. */

const figures = v.array(v.number());
const maybe = v.nullable(v.number());
const text = v.string();

const noise = v.strictObject({ octaves_Hz: figures, levels_dB: figures, NR: v.number(), NC: maybe });

const piece = v.strictObject({ name: text, speed_m_s: maybe, loss_Pa: v.number() });

const vent = v.strictObject({
  id: text,
  name: text,
  opening: text,
  direction: v.picklist(['supply', 'extract']),
  bands_Hz: figures,
  Dne_dB: figures,
  /** of Dn,e */
  ratings: v.strictObject({ Dnew: maybe, C: maybe, Ctr: maybe }),
  /** with the air moving, and with the fans standing */
  insertion_loss_dB: figures,
  insertion_loss_fan_off_dB: figures,
  /** by how much partitions that pass sound themselves raise the way along the air */
  through_partitions_dB: figures,
  R_dB: figures,
  spread_dB: figures,
  limiting: v.array(v.picklist(['air', 'casing', 'duct-wall', 'joints'])),
  ways: v.array(v.strictObject({ kind: text, name: text, Dne_dB: figures })),
  estimate: v.boolean(),
  wall: v.nullable(
    v.strictObject({ surface: text, wanted_Dne_dB: figures, lost_dB: figures, lost_overall_dB: v.number() }),
  ),
  flow_L_s: v.number(),
  fan_pressure_Pa: v.number(),
  pieces: v.array(piece),
  noise_in_room: v.nullable(noise),
  noise_outwards_Lw_dB: figures,
  /** each piece by itself; NR in the room by itself, null where the room is not known */
  noise_pieces: v.array(v.strictObject({ name: text, NR: maybe, into_room_Lw_dB: figures, outwards_Lw_dB: figures })),
  /** name of the piece that most of the noise in the room comes from */
  loudest_piece: v.nullable(text),
  fan_noise_estimated: v.boolean(),
});

const scenario = v.strictObject({
  key: text,
  name: text,
  minutes: figures,
  CO2_ppm: figures,
  peak_ppm: v.number(),
  minutes_to_1000_ppm: maybe,
  minutes_to_1500_ppm: maybe,
  minutes_to_5000_ppm: maybe,
});

const air = v.strictObject({
  people: v.number(),
  volume_m3: v.number(),
  room_pressure_Pa: v.number(),
  fresh_air_L_s: v.number(),
  /** fans standing, door closed: by warmth and wind alone */
  fan_off_L_s: v.number(),
  /** from mouth to mouth in the planned direction */
  natural_draught_Pa: v.strictObject({ warmth: v.number(), wind: v.number() }),
  planned_L_s: v.number(),
  least_L_s: v.number(),
  for_CO2_target_L_s: v.number(),
  scenarios: v.array(scenario),
  heat: v.strictObject({
    people_W: v.number(),
    equipment_W: v.number(),
    rise_K: maybe,
    flow_for_most_rise_L_s: v.number(),
  }),
  moisture: v.nullable(
    v.strictObject({ relative_humidity_percent: v.number(), dew_point_C: v.number(), saturated: v.boolean() }),
  ),
});

const note = v.strictObject({
  code: text,
  severity: v.picklist(['mistake', 'hint', 'caution']),
  sentence: text,
  part: v.nullable(text),
});

export const breatheResult = v.strictObject({
  vents: v.array(vent),
  noise_in_room: v.nullable(noise),
  air: v.nullable(air),
  notes: v.array(note),
});
