import {
  CARBON_DIOXIDE_LEVELS,
  carbonDioxideOf,
  type AirPlan,
  type AirResult,
  type AirScenario,
} from '../../engine/airflow/index.ts';
import type { Evaluator } from '../../engine/evaluate.ts';
import type { Working, WorkingLine } from '../../engine/quantities/index.ts';
import type { Project } from '../../project/schema.ts';
import { toBreathe } from '../../project/toBreathe.ts';
import { toBuild } from '../../project/toEngine.ts';
import type { AirFigure } from '../protocol.ts';
import { figure } from './wording.ts';

const LITRES = 1000;
const litres = (flow: number): string => `${figure(flow * LITRES)} L/s`;

interface Told {
  readonly title: string;
  readonly value: string;
  readonly lines: readonly WorkingLine[];
  readonly likelyError: string;
}
type Tell = (plan: AirPlan, air: AirResult) => Told;

const planned: Tell = (plan, air) => ({
  title: 'Fresh air to plan with',
  value: litres(air.planned),
  lines: [
    {
      what: 'So much for each person in the room.',
      equation: 'q = n · q_person',
      numbers: `${air.people} · ${litres(plan.perPerson)} = ${litres(air.planned)}`,
      source: 'EN 16798-1:2019, categories I to II: 8 to 10 L/s a person (from memory)',
    },
  ],
  likelyError: 'A choice, not a prediction: with more exertion more is needed, as the CO2 over the session shows.',
});

const least: Tell = (plan, air) => ({
  title: 'Least fresh air',
  value: litres(air.least),
  lines: [
    {
      what: 'For each person and for the floor of a room where music is made.',
      equation: 'q = 5 L/s · n + 0.3 L/s·m² · S',
      numbers: `5 · ${air.people} + 0.3 · ${figure(plan.floor)} = ${litres(air.least)}`,
      source: 'ANSI/ASHRAE 62.1-2016, minimum ventilation rates, music/theatre/dance',
    },
  ],
  likelyError: 'A minimum of a standard. Local rules may ask for more, and they prevail.',
});

/** Warmth and wind between the mouths; none where both are 0. */
const draughtLines = (plan: AirPlan, { draught, still }: AirResult): readonly WorkingLine[] =>
  draught.stack === 0 && draught.wind === 0
    ? []
    : [
        {
          what: 'Warm air that rises between the mouths of the vents, and the wind on them: with the fans, or alone while they stand.',
          equation: 'Δp = (ρo − ρi) · g · h + ΔCp · ½ρU²',
          numbers: `h ${figure(plan.heightBetween)} m, room ${plan.indoorTemperature} °C, outdoors ${plan.outdoorTemperature} °C: ${figure(draught.stack)} Pa; wind ${figure(plan.wind)} m/s: ${figure(draught.wind)} Pa; alone they move ${litres(still.outdoorAir)}`,
          source: 'hydrostatics; Cp 0.25 and −0.5: EN 16798-7:2017 (from memory)',
        },
      ];

const flow: Tell = (plan, air) => ({
  title: 'Fresh air that comes in',
  value: litres(air.point.outdoorAir),
  lines: [
    ...draughtLines(plan, air),
    ...air.paths.flatMap(({ id, flow: own, pieces, loss, fanPressure }): WorkingLine[] => [
      {
        what: `Vent “${id}”: where the pressure of its fan and of the room equals what its pieces take.`,
        equation: 'Δp_fan ± p_room = Σ (ζ + f·L/Dh) · ρv²/2',
        numbers: `at ${litres(Math.abs(own))}: fan ${figure(fanPressure)} Pa, room ${figure(air.point.pressure)} Pa; pieces ${pieces.map((piece) => figure(piece.loss)).join(' + ')} = ${figure(loss)} Pa`,
        source: 'Darcy-Weisbach, Colebrook (1939); loss coefficients: published tables of air ducts',
      },
    ]),
  ],
  likelyError:
    'Pieces close together disturb one another, and joints leak: expect a fifth more or less. Measure it when it is built.',
});

/** The first step of a session in numbers; the others follow in the same way. */
const courseLine = (plan: AirPlan, air: AirResult, { course, key }: AirScenario): WorkingLine => {
  const [step] = plan.session;
  const generation = carbonDioxideOf(plan.people) * (step?.presence ?? 1);
  const fresh = key === 'planned' ? air.point.outdoorAir : air.still.outdoorAir;
  return {
    what: `CO2 in well-mixed air, step by step through the session${key === 'planned' ? '' : ', fan off'}. The first step of ${figure((step?.duration ?? 0) / 60, 0)} min as an example.`,
    equation: fresh > 0 ? 'C(t) = Co + G/Q + (C0 − Co − G/Q) · e^(−Qt/V)' : 'C(t) = Co + G·t/V',
    numbers: `Co ${plan.outdoor} ppm, G ${figure(generation * LITRES, 4)} L/s, Q ${litres(fresh)}, V ${figure(plan.volume)} m³; highest over the session ${figure(course.peak, 0)} ppm`,
    source: 'mass balance; CO2 per person: Persily & de Jonge, Indoor Air 27 (2017), Table 4',
  };
};

const peak: Tell = (plan, air) => {
  const scenario = air.scenarios.find(({ key }) => key === 'planned');
  return {
    title: 'Highest CO2 of the session',
    value: scenario ? `${figure(scenario.course.peak, 0)} ppm` : '–',
    lines: scenario ? [courseLine(plan, air, scenario)] : [],
    likelyError:
      'People differ by about a fifth, and their effort more. CO2 tells how used up the air is, not that it is good.',
  };
};

const fanOff: Tell = (plan, air) => {
  const scenario = air.scenarios.find(({ key }) => key === 'fan-off');
  const time = scenario?.timeTo1500 ?? null;
  return {
    title: `Time to ${CARBON_DIOXIDE_LEVELS.poor} ppm with the fan off`,
    value: time === null ? 'not reached' : `${figure(time / 60, 0)} min`,
    lines: scenario ? [...draughtLines(plan, air), courseLine(plan, air, scenario)] : [],
    likelyError: 'People differ by about a fifth, and their effort more. Take the shorter time; the weather may fail.',
  };
};

const heatLine = (plan: AirPlan, { heat, point }: AirResult): WorkingLine => ({
  what: 'All heat of people and equipment goes into the air that comes in; none through the walls.',
  equation: 'ΔT = Φ / (1.2 · q), Φ in W, q in L/s',
  numbers: `(${figure(heat.people, 0)} + ${figure(plan.equipment, 0)}) W / (1.2 · ${litres(point.outdoorAir)}) = ${heat.rise === null ? 'no air moves' : `${figure(heat.rise)} K`}`,
  source: 'heat capacity of air, common practice; people: Jones, Air Conditioning Engineering, 5th ed., Table 7.16',
});

const heat: Tell = (plan, air) => ({
  title: 'Warming of the room',
  value: air.heat.rise === null ? 'no fresh air moves' : `${figure(air.heat.rise)} K`,
  lines: [heatLine(plan, air)],
  likelyError: 'On the warm side: the walls take some of the heat for the first hour or two.',
});

const cooling: Tell = (plan, air) => ({
  title: `Fresh air for a warming of ${plan.mostRise} K`,
  value: litres(air.heat.flow),
  lines: [
    {
      ...heatLine(plan, air),
      equation: 'q = Φ / (1.2 · ΔT)',
      numbers: `(${figure(air.heat.people, 0)} + ${figure(plan.equipment, 0)}) W / (1.2 · ${plan.mostRise} K) = ${litres(air.heat.flow)}`,
    },
  ],
  likelyError: 'On the high side: the walls take some of the heat for the first hour or two.',
});

const moisture: Tell = (plan, air) => ({
  title: 'Humidity of the room once steady',
  value: air.moisture ? `${figure(air.moisture.relativeHumidity, 0)} %` : 'no fresh air moves',
  lines: [
    {
      what: 'Water that people give off, added to that of the outdoor air.',
      equation: 'p = φo · ps(To) + (G/Q) · 461.5 · T; φ = p / ps(T)',
      numbers: `${figure(air.heat.latent, 0)} W of evaporation, ${litres(air.point.outdoorAir)}, outdoors ${plan.outdoorTemperature} °C and ${plan.outdoorHumidity} %, room ${plan.indoorTemperature} °C${air.moisture ? `: dew point ${figure(air.moisture.dewPoint)} °C` : ''}`,
      source: 'mass balance; Magnus’ formula (17.625, 243.04 °C); evaporation 2450 J/g',
    },
  ],
  likelyError: 'Boards and wool take up water for hours: short sessions stay drier than this.',
});

const TOLD: Readonly<Record<AirFigure, Tell>> = {
  planned,
  least,
  flow,
  peak,
  'fan-off': fanOff,
  heat,
  cooling,
  moisture,
};

/** A figure of the room's air, worked out. @throws Error where the size of the room is not known */
export const airWorking = (evaluator: Evaluator, project: Project, which: AirFigure): Working => {
  const question = toBreathe(project);
  const { air } = evaluator.breathe(toBuild(project), question, 'full');
  if (!air || !question.air) throw new Error('the size of the room is not known: it has no floor or no walls yet');
  return {
    ...TOLD[which](question.air, air),
    assumptions: [
      'the air is mixed throughout the room',
      question.air.wind === 0 ? 'no wind and no open window' : 'a steady wind and no open window',
      'no heat through the walls',
    ],
  };
};
