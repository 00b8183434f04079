import type { PartEntry } from '../../../src/project/parts.ts';
import type { CandidateEntry, MeasuredEntry, Project } from '../../../src/project/schema.ts';

export type Way = 'assembly' | 'curve' | 'sealed' | 'size';

/** A candidate as it is being filled in; null where nothing is given yet. */
export interface CandidateDraft {
  readonly name: string;
  readonly way: Way;
  readonly assembly: string | null;
  readonly measured: MeasuredEntry | null;
  readonly size_mm: number | null;
  readonly depth_mm: number | null;
  readonly price_per_m2: number | null;
  readonly price_each: number | null;
  readonly labour_per_m2: number | null;
  readonly labour_each: number | null;
}

const sizeOf = (it: PartEntry | CandidateEntry): number | null => {
  if ('diameter_mm' in it && it.diameter_mm !== undefined) return it.diameter_mm;
  return 'width_mm' in it && it.width_mm !== undefined ? it.width_mm : null;
};

export const waysOf = (part: PartEntry): readonly Way[] =>
  part.kind === 'slit' || part.kind === 'hole' ? ['sealed', 'size'] : ['assembly', 'curve'];

const wayOf = (candidate: CandidateEntry): Way => {
  if (candidate.sealed) return 'sealed';
  if (candidate.measured) return 'curve';
  return candidate.assembly === undefined ? 'size' : 'assembly';
};

/** What the form starts from: the candidate, or the nearest sensible beginning for a new one. */
export const draftOf = (project: Project, part: PartEntry, candidate: CandidateEntry | null): CandidateDraft => {
  const own = 'assembly' in part ? part.assembly : undefined;
  const other = Object.keys(project.assemblies).find((id) => id !== own) ?? null;
  const way = candidate ? wayOf(candidate) : (waysOf(part)[0] ?? 'assembly');
  return {
    name: candidate?.name ?? '',
    way,
    assembly: candidate?.assembly ?? other,
    measured: candidate?.measured ?? null,
    size_mm: (candidate && sizeOf(candidate)) ?? sizeOf(part),
    depth_mm: candidate?.depth_mm ?? ('depth_mm' in part ? part.depth_mm : null),
    price_per_m2: candidate?.price_per_m2 ?? null,
    price_each: candidate?.price_each ?? null,
    labour_per_m2: candidate?.labour_per_m2 ?? null,
    labour_each: candidate?.labour_each ?? null,
  };
};

/** A name from what is chosen, until the user gives one. */
export const suggestedName = (project: Project, part: PartEntry, draft: CandidateDraft): string => {
  if (draft.way === 'sealed') return 'Sealed for good';
  if (draft.way === 'curve') return 'Tested element';
  if (draft.way === 'size') return `${part.kind === 'hole' ? 'Hole' : 'Gap'} of ${draft.size_mm ?? '?'} mm`;
  return (draft.assembly && project.assemblies[draft.assembly]?.name) ?? 'Another make-up';
};

type Made = Omit<CandidateEntry, 'id'>;

const makeOf = (part: PartEntry, draft: CandidateDraft): Partial<Made> | string => {
  switch (draft.way) {
    case 'sealed':
      return { sealed: true };
    case 'assembly':
      return draft.assembly ? { assembly: draft.assembly } : 'Choose a make-up first; new ones are made in Make up.';
    case 'curve':
      return draft.measured ? { measured: draft.measured, fittings: undefined } : 'Give the laboratory curve first.';
    case 'size': {
      if (draft.size_mm === null) return 'Give the size first.';
      const size = part.kind === 'hole' ? { diameter_mm: draft.size_mm } : { width_mm: draft.size_mm };
      return { ...size, ...(draft.depth_mm === null ? {} : { depth_mm: draft.depth_mm }) };
    }
  }
};

const PRICES = ['price_per_m2', 'price_each', 'labour_per_m2', 'labour_each'] as const;

/** The candidate that the form describes, or the sentence that says what is missing. */
export const candidateOfDraft = (
  project: Project,
  part: PartEntry,
  draft: CandidateDraft,
): { readonly ok: true; readonly made: Made } | { readonly ok: false; readonly sentence: string } => {
  const make = makeOf(part, draft);
  if (typeof make === 'string') return { ok: false, sentence: make };
  const prices = Object.fromEntries(PRICES.flatMap((key) => (draft[key] === null ? [] : [[key, draft[key]]])));
  const name = draft.name.trim() || suggestedName(project, part, draft).slice(0, 200);
  return { ok: true, made: { name, ...make, ...prices } };
};

/** Keys that a candidate may have beside its name; those not given are taken out when it is changed. */
export const CANDIDATE_KEYS = [
  'assembly',
  'measured',
  'sealed',
  'width_mm',
  'diameter_mm',
  'depth_mm',
  ...PRICES,
] as const;
