import { findPart, type PartEntry } from '../parts.ts';
import type { AssemblyEntry, OpeningEntry, Project, SurfaceEntry } from '../schema.ts';
import { refuse } from './command.ts';
import { mapped, patched } from './patch.ts';

/** The surface with this id. @throws {CommandRefusal} */
export const surfaceOf = (project: Project, id: string): SurfaceEntry =>
  project.surfaces.find((surface) => surface.id === id) ?? refuse(`There is no surface "${id}" in this project.`);

/** The part with this id. @throws {CommandRefusal} */
export const partOf = (project: Project, id: string): PartEntry =>
  findPart(project, id) ?? refuse(`There is no part "${id}" in this project.`);

/** The assembly with this id. @throws {CommandRefusal} */
export const assemblyOf = (project: Project, id: string): AssemblyEntry => {
  const found = Object.hasOwn(project.assemblies, id) ? project.assemblies[id] : undefined;
  return found ?? refuse(`There is no make-up "${id}" in this project.`);
};

export const withSurface = (project: Project, id: string, change: (surface: SurfaceEntry) => SurfaceEntry): Project => {
  surfaceOf(project, id);
  return patched(project, {
    surfaces: mapped(project.surfaces, (surface) => (surface.id === id ? change(surface) : surface)),
  });
};

export const withOpening = (project: Project, id: string, change: (opening: OpeningEntry) => OpeningEntry): Project => {
  if (!project.surfaces.some((surface) => surface.openings?.some((opening) => opening.id === id)))
    refuse(`There is no opening "${id}" in this project.`);
  const surfaces = mapped(project.surfaces, (surface) =>
    surface.openings
      ? patched(surface, { openings: mapped(surface.openings, (it) => (it.id === id ? change(it) : it)) })
      : surface,
  );
  return patched(project, { surfaces });
};

/** Changes what surfaces and openings have in common. */
export const withPart = (project: Project, id: string, change: <P extends PartEntry>(part: P) => P): Project =>
  project.surfaces.some((surface) => surface.id === id)
    ? withSurface(project, id, change)
    : withOpening(project, id, change);

export const withAssembly = (
  project: Project,
  id: string,
  change: (assembly: AssemblyEntry) => AssemblyEntry,
): Project => {
  const before = assemblyOf(project, id);
  const after = change(before);
  return after === before ? project : patched(project, { assemblies: { ...project.assemblies, [id]: after } });
};

/** Takes parts and candidates that are gone out of the options. */
export const withoutSwaps = (project: Project, gone: (part: string, candidate: string) => boolean): Project => {
  if (!project.options) return project;
  const options = mapped(project.options, (option) => {
    const kept = Object.entries(option.swaps).filter(([part, candidate]) => !gone(part, candidate));
    return patched(option, { swaps: Object.fromEntries(kept) });
  });
  return patched(project, { options });
};
