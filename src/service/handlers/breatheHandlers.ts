import type { Handlers } from '../../contract/dispatcher.ts';
import type { Result } from '../../contract/methods.ts';
import type { BreatheResult, RatedNoise, VentReport } from '../../engine/breatheResult.ts';
import type { Evaluator } from '../../engine/evaluate.ts';
import type { AirPlan, AirResult } from '../../engine/airflow/index.ts';
import { toReduction } from '../../engine/quantities/index.ts';
import { NOISE_OCTAVES } from '../../engine/ratings/index.ts';
import { toBreathe } from '../../project/toBreathe.ts';
import { toBuild } from '../../project/toEngine.ts';
import { checkedProject } from '../checkedProject.ts';

type Answer = Result<'breathe'>;

const LITRES = 1000;
const MINUTE = 60;
/** A0 of Dn,e, m². */
const REFERENCE_AREA = 10;

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));
const all = (values: readonly number[], decimals: number): number[] => values.map((it) => rounded(it, decimals));
const orNull = (value: number | null, decimals: number): number | null =>
  value === null ? null : rounded(value, decimals);

const toNoise = (noise: RatedNoise | null): Answer['noise_in_room'] =>
  noise && {
    octaves_Hz: [...NOISE_OCTAVES],
    levels_dB: all(noise.levels, 1),
    NR: rounded(noise.noiseRating, 1),
    NC: orNull(noise.noiseCriterion, 1),
  };

/** 0 rather than −0, which JSON does not know. */
const pascals = (value: number): number => rounded(value, 2) + 0;

const toVent = (vent: VentReport, air: AirResult | null): Answer['vents'][number] => {
  const { sound, cost, noise } = vent;
  const path = air?.paths.find(({ id }) => id === vent.id);
  return {
    id: vent.id,
    name: vent.name,
    opening: vent.opening,
    direction: vent.direction,
    bands_Hz: [...sound.bands],
    Dne_dB: all(sound.normalisedDifference, 2),
    ratings: { Dnew: sound.ratings.Rw, C: sound.ratings.C, Ctr: sound.ratings.Ctr },
    insertion_loss_dB: all(sound.insertionLoss, 2),
    insertion_loss_fan_off_dB: all(vent.fanOff, 2),
    through_partitions_dB: all(sound.partitions, 2),
    R_dB: all(vent.R, 2),
    spread_dB: all(sound.spread, 1),
    limiting: [...sound.limiting],
    ways: sound.ways.map(({ kind, name, openArea }) => ({
      kind,
      name,
      Dne_dB: openArea.map((area) => rounded(toReduction(Math.max(1e-14, area) / REFERENCE_AREA), 2)),
    })),
    estimate: sound.estimate,
    wall: cost && {
      surface: cost.surface,
      wanted_Dne_dB: all(cost.wanted, 2),
      lost_dB: all(cost.lost, 2),
      lost_overall_dB: rounded(cost.lostOverall, 2),
    },
    flow_L_s: rounded(vent.flow * LITRES, 2),
    fan_pressure_Pa: rounded(path?.fanPressure ?? 0, 1),
    pieces: (path?.pieces ?? []).map(({ name, speed, loss }) => ({
      name,
      speed_m_s: orNull(speed, 2),
      loss_Pa: rounded(loss, 2),
    })),
    noise_in_room: toNoise(vent.inRoom),
    noise_outwards_Lw_dB: all(noise.outwards, 1),
    noise_pieces: noise.pieces.map(({ name, intoRoom, outwards }, i) => ({
      name,
      NR: orNull(vent.pieceRatings?.[i] ?? null, 1),
      into_room_Lw_dB: all(intoRoom, 1),
      outwards_Lw_dB: all(outwards, 1),
    })),
    loudest_piece: noise.loudest?.name ?? null,
    fan_noise_estimated: noise.estimated,
  };
};

const toAir = (air: AirResult, plan: AirPlan): Answer['air'] => ({
  people: air.people,
  volume_m3: rounded(plan.volume, 2),
  room_pressure_Pa: rounded(air.point.pressure, 2),
  fresh_air_L_s: rounded(air.point.outdoorAir * LITRES, 2),
  fan_off_L_s: rounded(air.still.outdoorAir * LITRES, 2),
  natural_draught_Pa: { warmth: pascals(air.draught.stack), wind: pascals(air.draught.wind) },
  planned_L_s: rounded(air.planned * LITRES, 2),
  least_L_s: rounded(air.least * LITRES, 2),
  for_CO2_target_L_s: rounded(air.forTarget * LITRES, 2),
  scenarios: air.scenarios.map(({ key, name, course, timeTo1000, timeTo1500, timeTo5000 }) => {
    const minutes = (seconds: number | null): number | null => (seconds === null ? null : rounded(seconds / MINUTE, 1));
    return {
      key,
      name,
      minutes: course.times.map((time) => rounded(time / MINUTE, 2)),
      CO2_ppm: all(course.concentrations, 0),
      peak_ppm: rounded(course.peak, 0),
      minutes_to_1000_ppm: minutes(timeTo1000),
      minutes_to_1500_ppm: minutes(timeTo1500),
      minutes_to_5000_ppm: minutes(timeTo5000),
    };
  }),
  heat: {
    people_W: rounded(air.heat.people, 0),
    equipment_W: rounded(air.heat.equipment, 0),
    rise_K: orNull(air.heat.rise, 1),
    flow_for_most_rise_L_s: rounded(air.heat.flow * LITRES, 1),
  },
  moisture: air.moisture && {
    relative_humidity_percent: rounded(air.moisture.relativeHumidity, 1),
    dew_point_C: rounded(air.moisture.dewPoint, 1),
    saturated: air.moisture.saturated,
  },
});

const toAnswer = (result: BreatheResult, plan: AirPlan | null): Answer => ({
  vents: result.vents.map((vent) => toVent(vent, result.air)),
  noise_in_room: toNoise(result.inRoom),
  air: result.air && plan && toAir(result.air, plan),
  notes: result.notes.map(({ code, severity, sentence, about }) => ({
    code,
    severity,
    sentence,
    part: about.part ?? null,
  })),
});

/** Vents and fresh air, on a document that need not be kept in the store. */
export const breatheHandlers = (evaluator: Evaluator): Pick<Handlers, 'breathe'> => ({
  breathe: ({ document }) => {
    const project = checkedProject(document);
    const question = toBreathe(project);
    return toAnswer(evaluator.breathe(toBuild(project), question, 'full'), question.air);
  },
});
