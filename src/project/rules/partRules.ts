import { fault, listText, type Fault, type Path } from '../fault.ts';
import { suggestion } from '../nearest.ts';
import { isPanel, isSurface, type PartEntry } from '../parts.ts';
import type { CandidateEntry, MeasuredEntry, Project } from '../schema.ts';
import { fittingFaults } from './fittingRules.ts';
import { measuredFaults } from './measuredRules.ts';

/** A part or candidate with the place where it stands. */
interface Made {
  readonly assembly?: string | undefined;
  readonly measured?: MeasuredEntry | undefined;
  readonly path?: string | undefined;
}

/** What is wrong with naming this assembly here; null where nothing is. */
export const assemblyFault = (project: Project, id: string, path: Path): Fault | null => {
  if (Object.hasOwn(project.assemblies, id)) return null;
  const ids = Object.keys(project.assemblies);
  return fault(path, id, `an id under "assemblies": ${listText(ids)}`, suggestion(id, ids));
};

/** A panel is made of an assembly or of a measured curve, a vent also of a path; never of two or none. */
const makeFaults = (project: Project, made: Made, vent: boolean, what: string, path: Path): readonly Fault[] => {
  const { assembly, measured } = made;
  const given = [assembly, measured, made.path].filter((it) => it !== undefined).length;
  if (made.path !== undefined && !vent)
    return [fault([...path, 'path'], made.path, 'an assembly or a measured curve', 'Only a vent is made of a path.')];
  if (given !== 1)
    return [
      fault(
        path,
        made,
        vent ? 'exactly one of assembly, measured and path' : 'exactly one of assembly and measured',
        given === 0
          ? `Say what ${what} is made of: name an assembly, or give a measured curve${vent ? ', or a path' : ''}.`
          : `Take ${given === 2 ? 'one' : 'two'} of them out of ${what}.`,
      ),
    ];
  if (made.path !== undefined) return pathFaults(project, made.path, [...path, 'path']);
  if (measured !== undefined) return measuredFaults(measured, [...path, 'measured']);
  const unknown = assembly === undefined ? null : assemblyFault(project, assembly, [...path, 'assembly']);
  return unknown ? [unknown] : [];
};

const pathFaults = (project: Project, id: string, path: Path): readonly Fault[] => {
  const ids = (project.vents ?? []).map((vent) => vent.id);
  return ids.includes(id) ? [] : [fault(path, id, `the id of a vent: ${listText(ids)}`, suggestion(id, ids))];
};

const NOT_FOR: Readonly<Record<'panel' | 'slit' | 'hole', readonly (keyof CandidateEntry)[]>> = {
  panel: ['sealed', 'width_mm', 'diameter_mm', 'depth_mm'],
  slit: ['assembly', 'measured', 'path', 'fittings', 'diameter_mm'],
  hole: ['assembly', 'measured', 'path', 'fittings', 'width_mm'],
};

/** Joints, locks and services of a candidate stand where those of its part could. */
const candidateFittingFaults = (
  project: Project,
  part: PartEntry,
  { name, assembly, fittings }: CandidateEntry,
  path: Path,
): readonly Fault[] => {
  if (fittings === undefined) return [];
  if (isPanel(part) && !isSurface(part))
    return fittingFaults(project, { kind: part.kind, name, assembly, ...fittings }, path);
  return [fault(path, fittings, 'fittings on a door, window or service', `Take "fittings" out of ${name}.`)];
};

/** A candidate is another make of the same kind of part. */
const candidateFaults = (
  project: Project,
  part: PartEntry,
  candidate: CandidateEntry,
  path: Path,
): readonly Fault[] => {
  const kind = part.kind === 'slit' || part.kind === 'hole' ? part.kind : 'panel';
  const wrong = NOT_FOR[kind].find((key) => candidate[key] !== undefined);
  if (wrong !== undefined)
    return [
      fault(
        [...path, wrong],
        candidate[wrong],
        kind === 'panel' ? 'an assembly or a measured curve' : 'sealed, or the sizes of the gap',
        `A ${part.kind} cannot be built that way; take "${wrong}" out.`,
      ),
    ];
  if (kind === 'panel')
    return [
      ...candidateFittingFaults(project, part, candidate, [...path, 'fittings']),
      ...makeFaults(project, candidate, part.kind === 'vent', candidate.name, path),
    ];
  const sizes = [candidate.width_mm, candidate.diameter_mm, candidate.depth_mm].some((size) => size !== undefined);
  if (sizes !== (candidate.sealed === undefined))
    return [
      fault(
        path,
        candidate,
        'either sealed or other sizes',
        `Say what becomes of ${part.name}: sealed, or its new sizes.`,
      ),
    ];
  return [];
};

const repeatedCandidates = (part: PartEntry, path: Path): readonly Fault[] =>
  (part.candidates ?? []).flatMap((candidate, i, all) =>
    all.findIndex((other) => other.id === candidate.id) === i
      ? []
      : [
          fault(
            [...path, i, 'id'],
            candidate.id,
            'an id that no other candidate of this part has',
            'Choose another id.',
          ),
        ],
  );

/** What each surface and opening is made of, and what it might be. */
export const partFaults = (project: Project, part: PartEntry, path: Path): readonly Fault[] => [
  ...(isPanel(part) && !isSurface(part) ? fittingFaults(project, part, path) : []),
  ...(isPanel(part) ? makeFaults(project, part, part.kind === 'vent', part.name, path) : []),
  ...repeatedCandidates(part, [...path, 'candidates']),
  ...(part.candidates ?? []).flatMap((candidate, i) =>
    candidateFaults(project, part, candidate, [...path, 'candidates', i]),
  ),
];
