import { THIRD_OCTAVES, type Spectrum } from '../engine/quantities/index.ts';
import type { Build, Candidate, Part, PartElement } from '../engine/shell/index.ts';
import { isPanel, isSurface, netArea, outlineArea, type PartEntry } from './parts.ts';
import { candidatePrice } from './prices.ts';
import type { CandidateEntry, MeasuredEntry, Project } from './schema.ts';
import { sources } from './sources.ts';
import { toAssembly } from './toAssembly.ts';
import { toFittings } from './toFittings.ts';
import { toFlanking } from './toFlanking.ts';
import { toVentPath, ventOf } from './toVents.ts';

const MILLI = 1e-3;

const toCurve = (measured: MeasuredEntry): PartElement => ({
  kind: 'measured',
  quantity: measured.R_dB ? 'R' : 'Dne',
  curve: { bands: measured.bands_Hz, values: measured.R_dB ?? measured.Dne_dB ?? [] },
});

/** What a panel is made of. @throws Error for a project that was not checked */
const toPanel = (project: Project, made: Pick<CandidateEntry, 'assembly' | 'measured' | 'path'>): PartElement => {
  if (made.path !== undefined) return { kind: 'path', path: toVentPath(project, ventOf(project, made.path)) };
  if (made.measured) return toCurve(made.measured);
  const entry = made.assembly === undefined ? undefined : project.assemblies[made.assembly];
  if (!entry) throw new Error(`assembly ${made.assembly ?? ''} must exist: check the project first`);
  return { kind: 'assembly', assembly: toAssembly(entry, project) };
};

/** What a part is made of; with a candidate, what it would be made of. */
const toElement = (project: Project, part: PartEntry, candidate?: CandidateEntry): PartElement => {
  if (isPanel(part)) {
    const panel = toPanel(project, candidate ?? part);
    const fittings =
      isSurface(part) || panel.kind !== 'assembly' ? undefined : toFittings(project, candidate?.fittings ?? part);
    return fittings && panel.kind === 'assembly' ? { ...panel, fittings } : panel;
  }
  const sealed = candidate ? candidate.sealed : part.sealed;
  if (sealed) return { kind: 'sealed' };
  const depth = (candidate?.depth_mm ?? part.depth_mm) * MILLI;
  if (part.kind === 'hole')
    return { kind: 'hole', diameter: (candidate?.diameter_mm ?? part.diameter_mm) * MILLI, depth };
  const width = (candidate?.width_mm ?? part.width_mm) * MILLI;
  return { kind: 'slit', length: part.length_mm * MILLI, width, depth, edge: part.edge ?? false };
};

/** Width, height and area in m and m²; of a gap those of its mouth. */
const sizesOf = (part: PartEntry): { width: number; height: number; area: number } => {
  if (isPanel(part)) return { width: part.width_m, height: part.height_m, area: outlineArea(part) };
  if (part.kind === 'slit') {
    const [width, height] = [part.length_mm * MILLI, part.width_mm * MILLI];
    return { width, height, area: width * height };
  }
  const diameter = part.diameter_mm * MILLI;
  return { width: diameter, height: diameter, area: (Math.PI / 4) * diameter ** 2 };
};

const toPart = (project: Project, part: PartEntry, surface: string, area = sizesOf(part).area): Part => ({
  id: part.id,
  name: part.name,
  kind: part.kind,
  surface,
  width: sizesOf(part).width,
  height: sizesOf(part).height,
  area,
  element: toElement(project, part),
  candidates: (part.candidates ?? []).map((candidate): Candidate => ({
    id: candidate.id,
    name: candidate.name,
    element: toElement(project, part, candidate),
    price: candidatePrice(project, candidate, area),
  })),
});

/** The spectrum of the project's source; flat without one. */
const toSpectrum = (project: Project): Spectrum =>
  sources[project.source ?? 'flat']?.spectrum ?? { bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 0) };

/** A checked project as everything that the evaluation needs to know, in SI. */
export const toBuild = (project: Project): Build => ({
  parts: [
    ...project.surfaces.flatMap((surface) => [
      toPart(project, surface, surface.id, netArea(surface)),
      ...(surface.openings ?? []).map((opening) => toPart(project, opening, surface.id)),
    ]),
    ...(project.flanking ?? []).map((path) => toFlanking(project, path)),
  ],
  options: (project.options ?? []).map(({ id, name, swaps }) => ({ id, name, swaps })),
  source: toSpectrum(project),
});

export { toAssembly } from './toAssembly.ts';
