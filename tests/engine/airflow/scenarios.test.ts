import { describe, expect, it } from 'vitest';
import { carbonDioxideOf, evaluateAir, openDoorExchange } from '../../../src/engine/airflow/index.ts';
import type { AirElement, AirPath, AirPlan, SessionStep } from '../../../src/engine/airflow/index.ts';

const section = { shape: 'round', diameter: 0.1 } as const;
const grille: AirElement = { kind: 'grille', name: 'Grille', section, freeShare: 0.6 };
const fan: AirElement = {
  kind: 'fan',
  name: 'Fan',
  section,
  curve: { flows: [0, 0.02, 0.04], pressures: [80, 60, 0] },
};
const paths: readonly AirPath[] = [
  { id: 'in', name: 'In', direction: 'supply', elements: [grille, fan] },
  { id: 'out', name: 'Out', direction: 'extract', elements: [grille] },
];
const MINUTE = 60;
const song = (fanOn: boolean): SessionStep => ({
  name: 'Song',
  duration: 4 * MINUTE,
  presence: 1,
  door: 'closed',
  fan: fanOn,
});
const opened: SessionStep = { name: 'Door open', duration: MINUTE, presence: 1, door: 'open', fan: false };
const room = (session: readonly SessionStep[]): AirPlan => ({
  volume: 36,
  floor: 15,
  people: [{ name: 'Band', count: 4, activity: 'playing-standing', person: null }],
  session,
  target: 1000,
  outdoor: 420,
  perPerson: 0.008,
  changesAt50: 0,
  indoorTemperature: 21,
  outdoorTemperature: 8,
  outdoorHumidity: 80,
  equipment: 300,
  mostRise: 5,
  door: { width: 0.9, height: 2 },
  heightBetween: 0,
  wind: 0,
  windOn: 'supply',
});
const songs = (fanOn: boolean, between: readonly SessionStep[]): readonly SessionStep[] =>
  Array.from({ length: 8 }, () => [song(fanOn), ...between]).flat();
const planned = (session: readonly SessionStep[]) => {
  const air = evaluateAir(room(session), paths);
  const find = (key: string) => {
    const found = air.scenarios.find((it) => it.key === key);
    if (!found) throw new Error(`no scenario ${key}`);
    return found;
  };
  return { air, own: find('planned'), off: find('fan-off'), open: find('door-open') };
};

describe('a session of songs', () => {
  it('without a fan lasts longer when the door is opened between songs, and each time the CO2 falls', () => {
    const shut = planned(songs(false, []));
    const aired = planned(songs(false, [opened]));
    expect(aired.own.course.peak).toBeLessThan(0.6 * shut.own.course.peak);
    const { times, concentrations } = aired.own.course;
    const at = (minutes: number): number => concentrations[times.indexOf(minutes * MINUTE)] ?? Number.NaN;
    for (let n = 0; n < 8; n += 1) expect(at(5 * n + 5)).toBeLessThan(at(5 * n + 4));
    // a minute of an open door changes 12 to 25 m³ of the 36
    expect(openDoorExchange(0.9, 2, 21, 8) * MINUTE).toBeGreaterThan(12);
    expect(openDoorExchange(0.9, 2, 21, 8) * MINUTE).toBeLessThan(25);
  });

  it('is told with the fan off and the door shut whatever the session says, which is the worst', () => {
    const { own, off, open } = planned(songs(true, [opened]));
    expect(off.course.peak).toBeGreaterThan(own.course.peak + 500);
    expect(open.course.peak).toBeLessThan(off.course.peak);
    const shut = planned(songs(true, [{ ...opened, door: 'closed' }]));
    expect(shut.off.course.peak).toBeCloseTo(off.course.peak, 6);
    // nothing leaves: Co + G·t/V over the 40 minutes
    const generation = carbonDioxideOf(room([]).people);
    expect(off.course.peak).toBeCloseTo(420 + (1e6 * generation * 40 * MINUTE) / 36, 6);
  });
});
