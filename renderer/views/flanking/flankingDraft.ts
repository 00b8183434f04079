import type { FlankingEntry, Project, SurfaceEntry } from '../../../src/project/schema.ts';

/** A path before it has its id. */
export type FlankingDraft = Omit<FlankingEntry, 'id'>;

const ALONG: Readonly<Record<FlankingEntry['kind'], readonly SurfaceEntry['kind'][]>> = {
  'slab-through': ['floor'],
  'soffit-through': ['ceiling', 'roof'],
  'wall-into-building': ['wall'],
};

const NAMES: Readonly<Record<FlankingEntry['kind'], string>> = {
  'slab-through': 'Floor slab into the house',
  'soffit-through': 'Soffit into the house',
  'wall-into-building': 'Wall into the house',
};

/** Surfaces that sound can go along past a given one. */
export const alongChoices = (project: Project, kind: FlankingEntry['kind'], past: string): readonly SurfaceEntry[] => {
  const others = project.surfaces.filter((surface) => surface.id !== past);
  const fitting = others.filter((surface) => ALONG[kind].includes(surface.kind));
  return fitting.length > 0 ? fitting : others;
};

/** Mineral layers of usual thickness make a heavy element. */
const isHeavy = (project: Project, assembly: string | undefined): boolean =>
  (project.assemblies[assembly ?? '']?.layers ?? []).some(
    (layer) => layer.kind === 'board' && layer.thickness_mm >= 50,
  );

/** How long two surfaces meet, m: the side that a wall shares with a floor or roof is its width, with a wall its height. */
export const meetingLength = (past: SurfaceEntry, along: SurfaceEntry): number =>
  past.kind === 'wall' && along.kind === 'wall' ? Math.min(past.height_m, along.height_m) : past.width_m;

/** The usual path of a kind past a surface; null where the room has too few surfaces or make-ups. */
export const flankingDraft = (
  project: Project,
  kind: FlankingEntry['kind'],
  pastId = project.surfaces.find((surface) => surface.kind === 'wall')?.id,
): FlankingDraft | null => {
  const past = project.surfaces.find((surface) => surface.id === pastId);
  const along = past && alongChoices(project, kind, past.id)[0];
  const beyond = along?.assembly ?? Object.keys(project.assemblies)[0];
  if (!past || !along || beyond === undefined) return null;
  return {
    name: NAMES[kind],
    kind,
    past: past.id,
    inside: { surface: along.id },
    beyond: { assembly: beyond },
    junction: isHeavy(project, along.assembly) ? 'rigid-t' : 'lightweight',
    run: 'straight',
    length_m: Math.round(meetingLength(past, along) * 1000) / 1000,
  };
};
