import type { AirPlan, SessionStep } from '../engine/airflow/index.ts';
import type { BreatheQuestion } from '../engine/breatheResult.ts';
import { AIR_DEFAULTS, type AirEntry } from './airSchema.ts';
import type { Project } from './schema.ts';
import { toVentPath, ventsInUse } from './toVents.ts';

const LITRE = 1e-3;
const MINUTE = 60;

/** What is played where the document does not say: two hours without a break. */
const USUAL_SESSION: readonly SessionStep[] = [
  { name: 'Playing', duration: 120 * MINUTE, presence: 1, door: 'closed', fan: true },
];

const floorArea = ({ surfaces }: Project): number =>
  surfaces.filter(({ kind }) => kind === 'floor').reduce((sum, { width_m, height_m }) => sum + width_m * height_m, 0);

/** Mean height of the walls, m; null without walls. */
const wallHeight = ({ surfaces }: Project): number | null => {
  const heights = surfaces.filter(({ kind }) => kind === 'wall').map(({ height_m }) => height_m);
  return heights.length === 0 ? null : heights.reduce((sum, height) => sum + height, 0) / heights.length;
};

/** Floor by height; null where the document has no floor or no walls and gives no volume. */
export const roomVolume = (project: Project): number | null => {
  const given = project.air?.volume_m3;
  if (given !== undefined) return given;
  const height = wallHeight(project);
  const floor = floorArea(project);
  return height === null || floor === 0 ? null : floor * height;
};

const toSession = (session: AirEntry['session']): readonly SessionStep[] =>
  session?.length
    ? session.map(({ name, minutes, people_percent, door, fan }) => ({
        name,
        duration: minutes * MINUTE,
        presence: (people_percent ?? 100) / 100,
        door,
        fan,
      }))
    : USUAL_SESSION;

/** Usual height of a room, m, to have a floor from a volume. */
const USUAL_HEIGHT = 2.4;

/** What is known of the air, in SI; null where the room's volume is not known. */
export const toAirPlan = (project: Project): AirPlan | null => {
  const volume = roomVolume(project);
  if (volume === null) return null;
  const air: AirEntry = project.air ?? {};
  type Measure = Exclude<keyof typeof AIR_DEFAULTS, 'wind_on'>;
  const value = (key: Measure): number => air[key] ?? AIR_DEFAULTS[key];
  const door = project.surfaces.flatMap(({ openings }) => openings ?? []).find(({ kind }) => kind === 'door');
  return {
    volume,
    floor: floorArea(project) || volume / USUAL_HEIGHT,
    people: (air.people ?? []).map(({ name, count, activity, sex, age }) => ({
      name,
      count,
      activity,
      person: sex || age ? { sex: sex ?? 'male', age: age ?? '21-30' } : null,
    })),
    session: toSession(air.session),
    target: value('target_ppm'),
    outdoor: value('outdoor_ppm'),
    perPerson: value('fresh_air_L_s_person') * LITRE,
    changesAt50: value('n50_per_h'),
    indoorTemperature: value('room_C'),
    outdoorTemperature: value('outdoor_C'),
    outdoorHumidity: value('outdoor_humidity_percent'),
    heightBetween: value('height_between_vents_m'),
    wind: value('wind_m_s'),
    windOn: air.wind_on ?? AIR_DEFAULTS.wind_on,
    equipment: value('equipment_W'),
    mostRise: value('most_rise_K'),
    door: door && 'width_m' in door ? { width: door.width_m, height: door.height_m } : null,
  };
};

/** A checked project as what is asked of its vents and its air. */
export const toBreathe = (project: Project): BreatheQuestion => ({
  vents: ventsInUse(project).map((vent) => ({
    path: toVentPath(project, vent),
    opening: vent.opening,
    surface: project.surfaces.find(({ openings }) => openings?.some(({ id }) => id === vent.opening))?.id ?? '',
  })),
  air: toAirPlan(project),
  reverberation: project.air?.reverberation_s ?? AIR_DEFAULTS.reverberation_s,
});
