import type { FlankingMake, FlankingSide, Part } from '../engine/shell/index.ts';
import type { FlankingEnd, FlankingEntry } from './flankingSchema.ts';
import { outlineArea } from './parts.ts';
import type { Project, SurfaceEntry } from './schema.ts';
import { toAssembly } from './toAssembly.ts';

/** Area of an element beyond the room where it is not given, m². */
const USUAL_AREA = 10;

const surfaceOf = (project: Project, id: string): SurfaceEntry => {
  const found = project.surfaces.find((surface) => surface.id === id);
  if (!found) throw new Error(`surface ${id} must exist: check the project first`);
  return found;
};

const toMake = (project: Project, made: Pick<SurfaceEntry, 'assembly' | 'measured'>): FlankingMake => {
  const entry = made.assembly === undefined ? undefined : project.assemblies[made.assembly];
  if (entry) return { kind: 'assembly', assembly: toAssembly(entry, project) };
  if (!made.measured?.R_dB) throw new Error('a flanking element must have a make-up or an R: check the project first');
  return { kind: 'measured', curve: { bands: made.measured.bands_Hz, values: made.measured.R_dB } };
};

const toSide = (project: Project, end: FlankingEnd): FlankingSide => {
  const surface = end.surface === undefined ? null : surfaceOf(project, end.surface);
  return {
    part: surface?.id ?? null,
    name: surface?.name ?? project.assemblies[end.assembly ?? '']?.name ?? '',
    make: toMake(project, surface ?? end),
    area: end.area_m2 ?? (surface ? outlineArea(surface) : USUAL_AREA),
    lining: end.lining ? { surfaceMass: end.lining.mass_kg_m2, stiffness: end.lining.stiffness_MN_m3 } : null,
  };
};

/** A flanking path of a checked project as a part of the shell, in SI. */
export const toFlanking = (project: Project, entry: FlankingEntry): Part => {
  const past = surfaceOf(project, entry.past);
  return {
    id: entry.id,
    name: entry.name,
    kind: 'flanking',
    surface: past.id,
    width: past.width_m,
    height: past.height_m,
    area: outlineArea(past),
    element: {
      kind: 'flanking',
      junction: entry.junction,
      run: entry.run,
      length: entry.length_m,
      inside: toSide(project, entry.inside),
      beyond: toSide(project, entry.beyond),
      crossing: { part: past.id, make: toMake(project, past) },
      vibrationReduction: entry.vibration_reduction_dB ?? null,
    },
    candidates: [],
  };
};
