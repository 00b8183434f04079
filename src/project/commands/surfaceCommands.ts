import { freshId } from '../freshId.ts';
import { partsOf } from '../parts.ts';
import type { SurfaceEntry } from '../schema.ts';
import { surfaceOf, withoutSwaps, withSurface } from './change.ts';
import { command } from './command.ts';
import { withoutFlanking } from './flankingCommands.ts';
import { patched, type Patch } from './patch.ts';
import { withoutVents } from './ventCommands.ts';

/** A surface or opening to be added; without an id it gets one from its name. */
export type New<T> = T extends unknown ? Omit<T, 'id'> & { readonly id?: string } : never;

export const addSurface = command<{ surface: New<SurfaceEntry> }>(
  ({ surface }) => `Add ${surface.name}`,
  (project, { surface }) => {
    const ids = partsOf(project).map((part) => part.id);
    return patched(project, {
      surfaces: [...project.surfaces, { ...surface, id: surface.id ?? freshId(surface.name, ids) }],
    });
  },
);

/** Paths along or past the surface go with it. */
export const removeSurface = command<{ surface: string }>('Remove a surface', (project, args) => {
  const gone = surfaceOf(project, args.surface);
  const ids = [gone, ...(gone.openings ?? [])].map((part) => part.id);
  const next = patched(project, { surfaces: project.surfaces.filter((surface) => surface !== gone) });
  const alone = withoutFlanking(next, ({ past, inside, beyond }) =>
    [past, inside.surface, beyond.surface].includes(gone.id),
  );
  const rest = withoutVents(alone, ({ opening }) => ids.includes(opening));
  return withoutSwaps(rest, (part) => ids.includes(part));
});

/** Changes name, kind, sizes or side; an assembly given takes the place of a curve and the other way round. */
export const setSurface = command<{
  surface: string;
  patch: Patch<Omit<SurfaceEntry, 'id' | 'openings' | 'candidates'>>;
}>('Change a surface', (project, { surface, patch }) =>
  withSurface(project, surface, (before) => patched(before, { ...patch, ...exclusive(patch) })),
);

/** The keys that must go when their opposite is set. */
export const exclusive = (patch: {
  assembly?: unknown;
  measured?: unknown;
  path?: unknown;
}): { assembly?: undefined } | object => {
  const made = (['assembly', 'measured', 'path'] as const).find((key) => patch[key] !== undefined);
  if (made === undefined) return {};
  const { [made]: _kept, ...others } = { assembly: undefined, measured: undefined, path: undefined };
  return others;
};
