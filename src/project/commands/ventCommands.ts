import { freshId } from '../freshId.ts';
import type { AirEntry, Project, VentElementEntry, VentEntry } from '../schema.ts';
import { partOf, withOpening } from './change.ts';
import { command, refuse } from './command.ts';
import { mapped, patched, type Patch } from './patch.ts';
import type { New } from './surfaceCommands.ts';

const ventOf = (project: Project, id: string): VentEntry =>
  project.vents?.find((vent) => vent.id === id) ?? refuse(`There is no vent "${id}" in this project.`);

const withVent = (project: Project, id: string, change: (vent: VentEntry) => VentEntry): Project => {
  ventOf(project, id);
  return patched(project, { vents: mapped(project.vents ?? [], (vent) => (vent.id === id ? change(vent) : vent)) });
};

const withElements = (
  project: Project,
  id: string,
  change: (elements: VentElementEntry[]) => VentElementEntry[],
): Project => withVent(project, id, (vent) => patched(vent, { elements: change(vent.elements) }));

const elementOf = (project: Project, id: string, at: number): VentElementEntry => {
  const vent = ventOf(project, id);
  return vent.elements[at] ?? refuse(`${vent.name} has no piece number ${at + 1}.`);
};

/** Adds a vent; its opening is made of it from now on. */
export const addVent = command<{ vent: New<VentEntry> }>(
  ({ vent }) => `Add ${vent.name}`,
  (project, { vent }) => {
    const opening = partOf(project, vent.opening);
    if (opening.kind !== 'vent') return refuse(`${opening.name} is not a vent; choose an opening of kind vent.`);
    const ids = (project.vents ?? []).map(({ id }) => id);
    const added: VentEntry = { ...vent, id: vent.id ?? freshId(vent.name, ids) };
    const next = patched(project, { vents: [...(project.vents ?? []), added] });
    return withOpening(next, vent.opening, (it) =>
      patched(it, { assembly: undefined, measured: undefined, path: added.id }),
    );
  },
);

/** Removes a vent that no opening and no candidate is made of. */
export const removeVent = command<{ vent: string }>('Remove a vent', (project, { vent }) => {
  const gone = ventOf(project, vent);
  const users = project.surfaces
    .flatMap(({ openings }) => openings ?? [])
    .filter((it) => [it, ...(it.candidates ?? [])].some((made) => 'path' in made && made.path === vent))
    .map(({ name }) => name);
  if (users.length > 0)
    refuse(`${gone.name} cannot be removed: ${users.join(', ')} is made of it. Give that another make-up first.`);
  return withoutVents(project, ({ id }) => id === vent);
});

/** Changes name, direction or note of a vent. */
export const setVent = command<{ vent: string; patch: Patch<Pick<VentEntry, 'name' | 'direction' | 'note'>> }>(
  'Change a vent',
  (project, { vent, patch }) => withVent(project, vent, (before) => patched<VentEntry>(before, patch)),
);

/** Adds a piece before the place `at`, or outermost. */
export const addVentElement = command<{ vent: string; element: VentElementEntry; at?: number }>(
  ({ element }) => `Add a ${element.kind}`,
  (project, { vent, element, at }) =>
    withElements(project, vent, (elements) => elements.toSpliced(at ?? elements.length, 0, element)),
);

export const removeVentElement = command<{ vent: string; at: number }>('Remove a piece', (project, { vent, at }) => {
  elementOf(project, vent, at);
  if (ventOf(project, vent).elements.length === 1) refuse('A vent has at least one piece; change this one instead.');
  return withElements(project, vent, (elements) => elements.toSpliced(at, 1));
});

export const moveVentElement = command<{ vent: string; at: number; to: number }>(
  'Move a piece',
  (project, { vent, at, to }) => {
    const moved = elementOf(project, vent, at);
    return at === to
      ? project
      : withElements(project, vent, (elements) => elements.toSpliced(at, 1).toSpliced(to, 0, moved));
  },
);

/** The whole piece anew; the same piece changes nothing. */
export const setVentElement = command<{ vent: string; at: number; element: VentElementEntry }>(
  'Change a piece of a vent',
  (project, { vent, at, element }) => {
    elementOf(project, vent, at);
    return withElements(project, vent, (elements) =>
      mapped(elements, (it) =>
        it === elements[at] ? (it.kind === element.kind ? patched<VentElementEntry>(it, element) : element) : it,
      ),
    );
  },
);

/** People, session and climate; a key given as undefined goes back to what is usual. */
export const setAir = command<{ patch: Patch<AirEntry> }>('Change what is known of the air', (project, { patch }) => {
  const air = patched<AirEntry>(project.air ?? {}, patch);
  return patched(project, { air: Object.keys(air).length > 0 ? air : undefined });
});

/** Takes vents out whose opening is gone. */
export const withoutVents = (project: Project, gone: (vent: VentEntry) => boolean): Project => {
  if (!project.vents?.some(gone)) return project;
  const kept = project.vents.filter((vent) => !gone(vent));
  return patched(project, { vents: kept.length > 0 ? kept : undefined });
};
