import type { Project } from '../../project/schema.ts';

/** Names of surfaces, openings and flanking paths by id, as the builder calls them. */
export const partNames = (project: Project): ReadonlyMap<string, string> =>
  new Map(
    [...project.surfaces.flatMap((surface) => [surface, ...(surface.openings ?? [])]), ...(project.flanking ?? [])].map(
      ({ id, name }): [string, string] => [id, name],
    ),
  );
