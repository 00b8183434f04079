import type { SessionStep } from '../../../src/engine/airflow/index.ts';
import type { AirEntry } from '../../../src/project/schema.ts';

export type StepEntry = NonNullable<AirEntry['session']>[number];

/** The steps as the document keeps them, also those that stand for none given. */
export const stepEntries = (session: readonly SessionStep[]): readonly StepEntry[] =>
  session.map(({ name, duration, presence, door, fan }) => ({
    name,
    minutes: Number((duration / 60).toFixed(1)),
    people_percent: Math.round(presence * 100),
    door,
    fan,
  }));

/** A session of a length, with a break of some minutes after each stretch of playing. */
export const plannedSession = (minutes: number, playing: number, pause: number): readonly StepEntry[] => {
  const steps: StepEntry[] = [];
  let left = minutes;
  while (left > 0) {
    const stretch = Math.min(playing, left);
    steps.push({ name: 'Playing', minutes: stretch, people_percent: 100, door: 'closed', fan: true });
    left -= stretch;
    if (left <= 0 || pause <= 0) continue;
    const rest = Math.min(pause, left);
    steps.push({ name: 'Break', minutes: rest, people_percent: 0, door: 'open', fan: true });
    left -= rest;
  }
  return steps.slice(0, 40);
};

/** When not everybody is in the room or the door stands open: minutes from the start. */
export const absences = (
  session: readonly SessionStep[],
): readonly { readonly from: number; readonly to: number; readonly label: string }[] => {
  let at = 0;
  return session.flatMap(({ name, duration, presence, door }) => {
    const from = at / 60;
    at += duration;
    return presence < 1 || door === 'open' ? [{ from, to: at / 60, label: name }] : [];
  });
};
