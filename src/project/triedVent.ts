import { commands } from './commands/index.ts';
import { findPart } from './parts.ts';
import type { Project } from './schema.ts';

/**
 * The project as if a vent were built in: its opening is made of it.
 * @param vent id; null, or one in use or without its opening, leaves the project as it is
 */
export const withTriedVent = (project: Project, vent: string | null): Project => {
  const opening = project.vents?.find(({ id }) => id === vent)?.opening;
  const part = opening === undefined ? null : findPart(project, opening);
  if (vent === null || part?.kind !== 'vent' || part.path === vent) return project;
  return commands.setPart.apply(project, { part: part.id, path: vent });
};
