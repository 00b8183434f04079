import { DAMP, FIXINGS, JOINTS } from '../engine/uncertainty/index.ts';
import type { Target, Workmanship } from '../engine/uncertainty/index.ts';
import type { Project } from './schema.ts';

/** How the room is put together, as the engine draws it. */
export const toWorkmanship = ({ workmanship }: Project): Workmanship => ({
  joints: JOINTS[workmanship?.joints ?? 'usual'],
  fixings: FIXINGS[workmanship?.fixings ?? 'usual'],
  damp: DAMP[workmanship?.damp ?? 'usual'],
});

/** What the whole room is to reach; null without a target. */
export const toTarget = ({ target }: Project): Target | null =>
  target ? { figure: target.rating, value: target.value_dB } : null;
