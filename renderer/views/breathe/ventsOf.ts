import type { Project } from '../../../src/project/schema.ts';

/** Vent openings that no vent belongs to yet, with the surface they are in. */
export const freeOpenings = (
  project: Project,
): readonly { readonly id: string; readonly name: string; readonly surface: string }[] => {
  const taken = new Set((project.vents ?? []).map(({ opening }) => opening));
  return project.surfaces.flatMap(({ name: surface, openings }) =>
    (openings ?? [])
      .filter(({ id, kind }) => kind === 'vent' && !taken.has(id))
      .map(({ id, name }) => ({ id, name, surface })),
  );
};
