import type { Note, NoteFigure } from '../quantities/index.ts';
import type { AirPlan } from './airPlan.ts';
import type { AirResult, AirScenario } from './airResult.ts';
import { hasFan } from './pathLoss.ts';
import type { AirPath } from './pathLoss.ts';
import { speedNotes } from './speedNotes.ts';

type Judged = Omit<AirResult, 'notes'>;
type Advice = (plan: AirPlan, paths: readonly AirPath[], air: Judged) => readonly Note[];

const LITRES = 1000;

const figure = (term: string, value: number, unit: string): NoteFigure => ({ term, value, unit });
const litres = (flow: number): string => `${Math.round(flow * LITRES)} L/s`;
const minutes = (seconds: number): string => `${Math.round(seconds / 60)} min`;

/** A closed room has no reserve: it needs a way in and a way out. */
const noWay: Advice = (plan, paths, air) => {
  if (air.people === 0) return [];
  const missing = (['supply', 'extract'] as const).filter((way) => !paths.some(({ direction }) => direction === way));
  if (missing.length === 0 || (plan.changesAt50 > 0 && missing.length === 1)) return [];
  const what = missing.map((way) => (way === 'supply' ? 'fresh air in' : 'used air out')).join(' and no way for ');
  return [
    {
      code: 'no-way-for-air',
      severity: 'caution',
      sentence: `There is no way for ${what}. A sealed room has no reserve: plan one vent in and one vent out, so that both cannot be blocked at once.`,
      figures: [],
      about: {},
    },
  ];
};

const tooLittle: Advice = (_plan, paths, air) => {
  const wanted = Math.max(air.planned, air.least);
  if (air.people === 0 || air.point.outdoorAir >= wanted * 0.98) return [];
  const unsafe = air.point.outdoorAir < air.least * 0.98;
  const fan = paths.some(hasFan);
  const way = fan ? 'Make ducts or boxes wider, or take a stronger fan' : 'Put a fan into one of the vents';
  return [
    {
      code: 'too-little-air',
      severity: unsafe ? 'caution' : 'mistake',
      sentence: `${litres(air.point.outdoorAir)} of fresh air come in; ${air.people} ${air.people === 1 ? 'person needs' : 'people need'} ${litres(wanted)}. ${way}; do not save air for the sake of sound.`,
      figures: [
        figure('Fresh air', air.point.outdoorAir * LITRES, 'L/s'),
        figure('Planned', air.planned * LITRES, 'L/s'),
        figure('Least', air.least * LITRES, 'L/s'),
      ],
      about: {},
    },
  ];
};

/** Weather moves less than this as good as nothing, m³/s. */
const BREATH = 5e-4;

const fanMustRun = ({ still }: Judged, { timeTo1500, timeTo5000 }: AirScenario): Note => {
  const poor =
    timeTo1500 === null
      ? ''
      : `With the fan off and the door closed the air is poor after ${minutes(timeTo1500)} (1500 ppm CO2)${timeTo5000 === null ? '' : `, and past the limit for a day's work after ${minutes(timeTo5000)} (5000 ppm)`}. `;
  const weather =
    still.outdoorAir > BREATH
      ? `Warmth and wind are reckoned to move ${litres(still.outdoorAir)} through the standing fan; on a still or mild day they move nothing. `
      : '';
  return {
    code: 'fan-must-run',
    severity: 'caution',
    sentence: `${poor}${weather}The fan must run while anyone is in the room; hang up a CO2 monitor with an infrared sensor.`,
    figures: [
      ...(timeTo1500 === null ? [] : [figure('Until 1500 ppm', timeTo1500 / 60, 'min')]),
      ...(still.outdoorAir > BREATH ? [figure('Fan off', still.outdoorAir * LITRES, 'L/s')] : []),
    ],
    about: {},
  };
};

const carbonDioxide: Advice = (plan, _paths, air) => {
  const planned = air.scenarios.find(({ key }) => key === 'planned');
  const off = air.scenarios.find(({ key }) => key === 'fan-off');
  const notes: Note[] = [];
  if (planned && planned.course.peak > plan.target)
    notes.push({
      code: 'carbon-dioxide',
      severity: planned.course.peak > 2000 ? 'caution' : 'mistake',
      sentence: `CO2 rises to ${Math.round(planned.course.peak)} ppm; ${plan.target} ppm were to be held. ${litres(air.forTarget)} hold it for good; longer breaks help too.`,
      figures: [
        figure('Highest CO2', planned.course.peak, 'ppm'),
        figure('Flow for the target', air.forTarget * LITRES, 'L/s'),
      ],
      about: {},
    });
  if (off && air.people > 0 && (off.timeTo1500 !== null || air.still.outdoorAir > BREATH))
    notes.push(fanMustRun(air, off));
  return notes;
};

const warm: Advice = (plan, _paths, { heat }) =>
  heat.rise !== null && heat.rise > plan.mostRise
    ? [
        {
          code: 'too-warm',
          severity: heat.rise > 20 ? 'caution' : 'hint',
          sentence: `People and equipment warm the air by ${Math.round(heat.rise)} K. Holding it to ${plan.mostRise} K takes ${litres(heat.flow)}${heat.flow > 0.12 ? ': more than quiet vents carry, so plan cooling' : ''}. Stop when the room gets too hot.`,
          figures: [figure('Rise', heat.rise, 'K'), figure('Flow', heat.flow * LITRES, 'L/s')],
          about: {},
        },
      ]
    : [];

const damp: Advice = (plan, _paths, { moisture }) => {
  if (moisture === null || moisture.dewPoint <= plan.outdoorTemperature + 1) return [];
  return [
    {
      code: 'condensation',
      severity: moisture.relativeHumidity > 75 ? 'caution' : 'hint',
      sentence: `The room's air gives off water on anything below ${moisture.dewPoint.toFixed(0)} °C: the fresh-air duct inside, and the used-air duct where it runs through the cold. Insulate both, let them fall outwards, and keep a lid to look into the box: wet lining grows mould.`,
      figures: [
        figure('Dew point', moisture.dewPoint, '°C'),
        figure('Relative humidity', moisture.relativeHumidity, '%'),
      ],
      about: {},
    },
  ];
};

/** Mitigations that hold for every room of this kind. */
const always: Advice = (_plan, paths, air) =>
  paths.length === 0 || air.people === 0
    ? []
    : [
        {
          code: 'no-combustion',
          severity: 'caution',
          sentence:
            'No stove, generator or open flue in the room or near its intake: a fan in a tight room can draw fumes back, and carbon monoxide cannot be smelt.',
          figures: [],
          about: {},
        },
      ];

const tooFast: Advice = (_plan, paths, air) => speedNotes(paths, air.paths);

const ADVICE: readonly Advice[] = [noWay, tooLittle, carbonDioxide, tooFast, warm, damp, always];

/** What to beware of in the air of a room. Fresh air is never traded for quiet. */
export const airNotes = (plan: AirPlan, paths: readonly AirPath[], air: Judged): Note[] =>
  ADVICE.flatMap((advice) => advice(plan, paths, air));
