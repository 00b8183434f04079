import type { SurfaceEntry } from '../schema.ts';
import { command } from './command.ts';
import type { Patch } from './patch.ts';
import { addSurface, setSurface, type New } from './surfaceCommands.ts';

/** Several surfaces in one step, as when a room is begun from its length, width and height. */
export const addSurfaces = command<{ surfaces: readonly New<SurfaceEntry>[] }>(
  'Add the surfaces of a room',
  (project, { surfaces }) => surfaces.reduce((next, surface) => addSurface.apply(next, { surface }), project),
);

/** Several surfaces changed in one step, as when the room becomes longer. */
export const setSurfaces = command<{
  changes: readonly { readonly surface: string; readonly patch: Patch<Pick<SurfaceEntry, 'width_m' | 'height_m'>> }[];
}>('Change the size of the room', (project, { changes }) =>
  changes.reduce((next, change) => setSurface.apply(next, change), project),
);
