import type { AssemblyEntry, OpeningEntry, Project, SurfaceEntry } from '../schema.ts';
import { addAssembly } from './assemblyCommands.ts';
import { command } from './command.ts';
import { addOpening, moveOpening } from './openingCommands.ts';
import type { Patch } from './patch.ts';
import { addSurface, setSurface, type New } from './surfaceCommands.ts';

/** Make-ups that new parts need and the project does not have yet, by id. */
type NewAssemblies = Readonly<Record<string, AssemblyEntry>>;

const withAssemblies = (project: Project, assemblies: NewAssemblies): Project =>
  Object.entries(assemblies).reduce((next, [id, assembly]) => addAssembly.apply(next, { id, assembly }), project);

/** Several surfaces in one step, as when a room is begun from its length, width and height. */
export const addSurfaces = command<{ surfaces: readonly New<SurfaceEntry>[]; assemblies: NewAssemblies }>(
  ({ surfaces }) => (surfaces.length === 1 ? `Add ${surfaces[0]?.name}` : 'Add the surfaces of a room'),
  (project, { surfaces, assemblies }) =>
    surfaces.reduce((next, surface) => addSurface.apply(next, { surface }), withAssemblies(project, assemblies)),
);

/** An opening together with the make-up that it starts from. */
export const addMadeOpening = command<{ surface: string; opening: New<OpeningEntry>; assemblies: NewAssemblies }>(
  ({ opening }) => `Add ${opening.name}`,
  (project, { surface, opening, assemblies }) =>
    addOpening.apply(withAssemblies(project, assemblies), { surface, opening }),
);

/** Several surfaces changed in one step, as when the room becomes longer. */
export const setSurfaces = command<{
  changes: readonly { readonly surface: string; readonly patch: Patch<Pick<SurfaceEntry, 'width_m' | 'height_m'>> }[];
}>('Change the size of the room', (project, { changes }) =>
  changes.reduce((next, change) => setSurface.apply(next, change), project),
);

/** An opening moved together with what belongs to it, as a door with the gap under it. */
export const moveOpenings = command<{
  moves: readonly { readonly opening: string; readonly x_m: number; readonly y_m: number }[];
}>('Move an opening', (project, { moves }) => moves.reduce((next, move) => moveOpening.apply(next, move), project));
