import type { OpeningEntry, Project, SurfaceEntry } from './schema.ts';

/** A part of the shell as the document holds it: a surface, or an opening in one. */
export type PartEntry = SurfaceEntry | OpeningEntry;

/** Every part in the document's order, each surface before its openings. */
export const partsOf = (project: Project): readonly PartEntry[] =>
  project.surfaces.flatMap((surface): readonly PartEntry[] => [surface, ...(surface.openings ?? [])]);

/** The part with this id, or null. */
export const findPart = (project: Project, id: string): PartEntry | null =>
  partsOf(project).find((part) => part.id === id) ?? null;

/** The surface that holds the opening with this id, or null. */
export const surfaceOfOpening = (project: Project, id: string): SurfaceEntry | null =>
  project.surfaces.find((surface) => surface.openings?.some((opening) => opening.id === id)) ?? null;

export const isSurface = (part: PartEntry): part is SurfaceEntry =>
  part.kind === 'wall' || part.kind === 'roof' || part.kind === 'ceiling' || part.kind === 'floor';

/** True where the part is a panel: something with an area, an assembly or a measured curve. */
export const isPanel = (part: PartEntry): part is Exclude<PartEntry, { kind: 'slit' | 'hole' }> =>
  part.kind !== 'slit' && part.kind !== 'hole';

/** Area that a part takes of the envelope, m²: its own sides multiplied; slits and holes take none. */
export const outlineArea = (part: PartEntry): number => (isPanel(part) ? part.width_m * part.height_m : 0);

/** Area of a surface that is left when its doors, windows, vents and services are taken off, m². */
export const netArea = (surface: SurfaceEntry): number =>
  (surface.openings ?? []).reduce((area, opening) => area - outlineArea(opening), outlineArea(surface));
