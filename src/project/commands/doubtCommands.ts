import type { TargetEntry } from '../targetSchema.ts';
import type { WorkmanshipEntry } from '../workmanshipSchema.ts';
import { command } from './command.ts';
import { patched } from './patch.ts';
import type { Patch } from './patch.ts';

/** What the whole room is to reach; null takes the target away. */
export const setTarget = command<{ target: TargetEntry | null }>(
  ({ target }) => (target ? 'Set the target' : 'Take the target away'),
  (project, { target }) => patched(project, { target: target ?? undefined }),
);

/** How well the room is put together. */
export const setWorkmanship = command<{ patch: Patch<WorkmanshipEntry> }>(
  'Change the workmanship',
  (project, { patch }) => {
    const workmanship = patched<WorkmanshipEntry>(project.workmanship ?? {}, patch);
    const given = Object.values(workmanship).some((level) => level !== undefined);
    return patched(project, { workmanship: given ? workmanship : undefined });
  },
);
