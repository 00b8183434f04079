import { isPanel, isSurface, type PartEntry } from '../parts.ts';
import type { CandidateEntry, Project } from '../schema.ts';
import { patched } from './patch.ts';

/** What a part and its candidates have in common: of what it is made, its gap sizes, its prices. */
export type Make = Omit<CandidateEntry, 'id' | 'name'>;

const KEYS = [
  'assembly',
  'measured',
  'path',
  'sealed',
  'width_mm',
  'diameter_mm',
  'depth_mm',
  'price_per_m2',
  'price_each',
  'labour_per_m2',
  'labour_each',
] as const satisfies readonly (keyof Make)[];

/** The make of a part or candidate without keys that are not set. */
export const makeOf = (it: Readonly<Partial<Record<(typeof KEYS)[number], unknown>>>): Make =>
  Object.fromEntries(KEYS.flatMap((key) => (it[key] === undefined ? [] : [[key, it[key]]])));

/**
 * The part made differently. A panel takes the whole make; a gap or hole keeps the sizes the make does not name, and
 * is open unless the make seals it.
 */
export const withMake = <P extends PartEntry>(part: P, make: Make): P => {
  const cleared = Object.fromEntries(
    KEYS.filter((key) => isPanel(part) || !key.endsWith('_mm')).map((key) => [key, undefined]),
  );
  const changes: object = { ...cleared, ...make };
  return patched(part, changes);
};

/** The make that a part has now, as a candidate would state it: what is sealed has no sizes. */
export const presentMake = (part: PartEntry): Make => {
  const make = makeOf(part);
  return make.sealed ? makeOf({ ...make, width_mm: undefined, diameter_mm: undefined, depth_mm: undefined }) : make;
};

/** A panel without any fittings: every key of theirs, not set. */
export const NO_FITTINGS = {
  seals: undefined,
  keyhole: undefined,
  letter_plate: undefined,
  second: undefined,
  items: undefined,
} as const satisfies { readonly [K in keyof NonNullable<CandidateEntry['fittings']>]-?: undefined };

/** Whether a part built like the candidate loses its own joints, locks and services: a curve has them in it. */
const refits = (part: PartEntry, candidate: CandidateEntry): boolean =>
  isPanel(part) && !isSurface(part) && (candidate.fittings !== undefined || candidate.assembly === undefined);

/** The part with the candidate's joints, locks and services, or its own where the candidate names none. */
export const withFittingsOf = <P extends PartEntry>(part: P, candidate: CandidateEntry): P => {
  const changes: object = { ...NO_FITTINGS, ...candidate.fittings };
  return refits(part, candidate) ? patched(part, changes) : part;
};

/** What a candidate must name so that the part gets its present fittings back. */
export const presentFittings = (part: PartEntry, candidate: CandidateEntry): Pick<CandidateEntry, 'fittings'> => {
  if (!refits(part, candidate) || !isPanel(part) || isSurface(part) || part.assembly === undefined) return {};
  const { seals, keyhole, letter_plate, second, items } = part;
  return { fittings: { seals, keyhole, letter_plate, second, items } };
};

/** How a former make is called when it becomes a candidate. */
export const nameOfMake = (project: Project, part: PartEntry): string => {
  if (part.kind === 'slit') return part.sealed ? 'Sealed' : `Gap of ${part.width_mm} mm`;
  if (part.kind === 'hole') return part.sealed ? 'Sealed' : `Hole of ${part.diameter_mm} mm`;
  if ('path' in part && part.path !== undefined)
    return project.vents?.find(({ id }) => id === part.path)?.name ?? part.name;
  if (part.measured) return isSurface(part) ? 'Tested build-up' : `Tested ${part.kind}`;
  const assembly = part.assembly === undefined ? undefined : project.assemblies[part.assembly];
  return assembly?.name ?? part.name;
};
