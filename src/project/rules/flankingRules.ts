import { fault, listText, type Fault, type Path } from '../fault.ts';
import type { FlankingEnd, FlankingEntry } from '../flankingSchema.ts';
import { suggestion } from '../nearest.ts';
import { partsOf } from '../parts.ts';
import type { Project } from '../schema.ts';
import { assemblyFault } from './partRules.ts';

const surfaceFault = (project: Project, id: string, path: Path): readonly Fault[] => {
  const ids = project.surfaces.map((surface) => surface.id);
  return ids.includes(id) ? [] : [fault(path, id, `the id of a surface: ${listText(ids)}`, suggestion(id, ids))];
};

/** An end is one surface of the room or one make-up beyond it. */
const endFaults = (project: Project, end: FlankingEnd, path: Path): readonly Fault[] => {
  if ((end.surface === undefined) === (end.assembly === undefined))
    return [fault(path, end, 'exactly one of surface and assembly', 'Say which surface it is, or of what it is made.')];
  if (end.surface !== undefined) return surfaceFault(project, end.surface, [...path, 'surface']);
  const unknown = end.assembly === undefined ? null : assemblyFault(project, end.assembly, [...path, 'assembly']);
  return unknown ? [unknown] : [];
};

/** The laboratory curve in place of a make-up, where the surface has one. */
const curveOf = (project: Project, id: string | undefined) =>
  project.surfaces.find((surface) => surface.id === id)?.measured;

/** Along a surface known by a curve alone: it must be an R, and K must be given since the mass is not known. */
const curveFaults = (project: Project, entry: FlankingEntry, path: Path): readonly Fault[] => {
  const { inside, beyond, past, run, junction } = entry;
  const ends = [
    ['inside', inside.surface],
    ['beyond', beyond.surface],
  ] as const;
  const wrong = ends.find(([, id]) => curveOf(project, id)?.Dne_dB !== undefined);
  if (wrong)
    return [
      fault(
        [...path, wrong[0], 'surface'],
        wrong[1],
        'a surface with a make-up or with a curve of R',
        'A curve of Dn,e says nothing of an element; choose another surface or give it a make-up.',
      ),
    ];
  if (junction === 'lightweight' || entry.vibration_reduction_dB !== undefined) return [];
  const across = run === 'straight' ? past : beyond.surface;
  const unknown = [inside.surface, across].find((id) => curveOf(project, id) !== undefined);
  if (unknown === undefined) return [];
  return [
    fault(
      [...path, 'vibration_reduction_dB'],
      undefined,
      'a number from -10 to 80',
      `The mass of ${unknown} is not known, since it is given by a curve; give K, or give that surface a make-up.`,
    ),
  ];
};

/** Flanking paths run along and past what exists, and have ids of their own. */
export function* flankingRules(project: Project): Generator<Fault> {
  const seen = new Set(partsOf(project).map((part) => part.id));
  for (const [i, entry] of (project.flanking ?? []).entries()) {
    const path: Path = ['flanking', i];
    if (seen.has(entry.id))
      yield fault([...path, 'id'], entry.id, 'an id that no part and no other path has', 'Choose another id.');
    seen.add(entry.id);
    yield* surfaceFault(project, entry.past, [...path, 'past']);
    yield* endFaults(project, entry.inside, [...path, 'inside']);
    yield* endFaults(project, entry.beyond, [...path, 'beyond']);
    if (entry.inside.surface === entry.past && entry.run === 'straight')
      yield fault(
        [...path, 'inside', 'surface'],
        entry.past,
        'another surface than the one the sound goes past',
        'Sound that runs straight on does so along an element across that surface, such as the floor.',
      );
    yield* curveFaults(project, entry, path);
  }
}
