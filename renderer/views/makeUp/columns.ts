import { isPanel, partsOf } from '../../../src/project/parts.ts';
import type { Project } from '../../../src/project/schema.ts';

export const MOST_COLUMNS = 4;

/**
 * Assemblies laid side by side: those of the document's comparison, before them the one that is only being looked at.
 * A project that compares nothing shows its first assembly.
 */
export const columnsOf = (project: Project, visiting: string | null): readonly string[] => {
  const known = (id: string): boolean => Object.hasOwn(project.assemblies, id);
  const compared = (project.compare ?? []).filter(known);
  const visitor = visiting !== null && known(visiting) && !compared.includes(visiting) ? [visiting] : [];
  const columns = [...visitor, ...compared].slice(0, MOST_COLUMNS);
  return columns.length > 0 ? columns : Object.keys(project.assemblies).slice(0, 1);
};

/** Letters by which columns and curves are named. */
export const columnLetter = (index: number): string => String.fromCharCode(65 + index);

/** Names of the parts that are built this way, and of those for which it is a candidate. */
export const usersOf = (
  project: Project,
  assembly: string,
): { readonly built: string[]; readonly considered: string[] } => ({
  built: partsOf(project)
    .filter((part) => isPanel(part) && part.assembly === assembly)
    .map((part) => part.name),
  considered: partsOf(project)
    .filter((part) => part.candidates?.some((candidate) => candidate.assembly === assembly))
    .map((part) => part.name),
});
