import { freshId } from '../freshId.ts';
import { isPanel, partsOf } from '../parts.ts';
import type { OpeningEntry } from '../schema.ts';
import { partOf, surfaceOf, withOpening, withoutSwaps, withSurface } from './change.ts';
import { command, refuse } from './command.ts';
import { patched, type Patch } from './patch.ts';
import { exclusive, type New } from './surfaceCommands.ts';
import { withoutVents } from './ventCommands.ts';

type PanelEntry = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;
type SlitEntry = Extract<OpeningEntry, { kind: 'slit' }>;
type HoleEntry = Extract<OpeningEntry, { kind: 'hole' }>;
export type OpeningPatch = Patch<
  Omit<PanelEntry & Omit<SlitEntry, 'kind'> & Omit<HoleEntry, 'kind'>, 'id' | 'candidates'>
>;

export const addOpening = command<{ surface: string; opening: New<OpeningEntry> }>(
  ({ opening }) => `Add ${opening.name}`,
  (project, { surface, opening }) => {
    const ids = partsOf(project).map((part) => part.id);
    const added: OpeningEntry = { ...opening, id: opening.id ?? freshId(opening.name, ids) };
    return withSurface(project, surface, (before) =>
      patched(before, { openings: [...(before.openings ?? []), added] }),
    );
  },
);

export const removeOpening = command<{ opening: string }>('Remove an opening', (project, { opening }) => {
  partOf(project, opening);
  const surfaces = project.surfaces.map((surface) =>
    surface.openings?.some((it) => it.id === opening)
      ? patched(surface, { openings: surface.openings.filter((it) => it.id !== opening) })
      : surface,
  );
  const alone = withoutVents(patched(project, { surfaces }), (vent) => vent.opening === opening);
  return withoutSwaps(alone, (part) => part === opening);
});

/** Changes name, sizes, make or prices of an opening; a door may become a window, a gap stays a gap. */
export const setOpening = command<{ opening: string; patch: OpeningPatch }>(
  'Change an opening',
  (project, { opening, patch }) =>
    withOpening(project, opening, (before) => {
      const changes: object = { ...patch, ...exclusive(patch) };
      if (patch.kind !== undefined && !isPanel(before))
        refuse(`${before.name} is a ${before.kind === 'slit' ? 'gap' : 'hole'}; remove it and add what you want.`);
      return patched(before, changes);
    }),
);

/** Places an opening from the surface's lower left corner, seen from inside; without figures it is not placed. */
export const moveOpening = command<{ opening: string; x_m?: number; y_m?: number }>(
  'Move an opening',
  (project, { opening, x_m, y_m }) => withOpening(project, opening, (before) => patched(before, { x_m, y_m })),
);

/** Puts an opening into another surface. */
export const rehangOpening = command<{ opening: string; surface: string }>(
  'Move an opening to another surface',
  (project, { opening, surface }) => {
    const moved = project.surfaces.flatMap((it) => it.openings ?? []).find((it) => it.id === opening);
    const target = surfaceOf(project, surface);
    if (!moved) return refuse(`There is no opening "${opening}" in this project.`);
    if (target.openings?.includes(moved)) return project;
    const unplaced: OpeningEntry = patched(moved, { x_m: undefined, y_m: undefined });
    const surfaces = project.surfaces.map((it) => {
      if (it === target) return patched(it, { openings: [...(it.openings ?? []), unplaced] });
      if (!it.openings?.includes(moved)) return it;
      return patched(it, { openings: it.openings.filter((other) => other !== moved) });
    });
    return patched(project, { surfaces });
  },
);
