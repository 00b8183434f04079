import type { FlankingEntry } from '../flankingSchema.ts';
import { freshId } from '../freshId.ts';
import { partsOf } from '../parts.ts';
import type { Project } from '../schema.ts';
import { command, refuse } from './command.ts';
import { mapped, patched, type Patch } from './patch.ts';
import type { New } from './surfaceCommands.ts';

const flankingOf = (project: Project, id: string): FlankingEntry =>
  project.flanking?.find((path) => path.id === id) ?? refuse(`There is no flanking path "${id}" in this project.`);

/** A way that sound takes along the building past one of the room's surfaces. */
export const addFlanking = command<{ path: New<FlankingEntry> }>(
  ({ path }) => `Add ${path.name}`,
  (project, { path }) => {
    const before = project.flanking ?? [];
    const ids = [...partsOf(project), ...before].map((it) => it.id);
    return patched(project, { flanking: [...before, { ...path, id: path.id ?? freshId(path.name, ids) }] });
  },
);

export const setFlanking = command<{ path: string; patch: Patch<Omit<FlankingEntry, 'id'>> }>(
  'Change a flanking path',
  (project, { path, patch }) => {
    flankingOf(project, path);
    const change = (it: FlankingEntry): FlankingEntry => (it.id === path ? patched<FlankingEntry>(it, patch) : it);
    return patched(project, { flanking: mapped(project.flanking ?? [], change) });
  },
);

export const removeFlanking = command<{ path: string }>('Remove a flanking path', (project, { path }) => {
  flankingOf(project, path);
  return withoutFlanking(project, (it) => it.id === path);
});

/** The project without the paths of which something is gone; the same reference where none is. */
export const withoutFlanking = (project: Project, gone: (path: FlankingEntry) => boolean): Project => {
  const kept = (project.flanking ?? []).filter((path) => !gone(path));
  if (kept.length === (project.flanking ?? []).length) return project;
  return patched(project, { flanking: kept.length > 0 ? kept : undefined });
};
