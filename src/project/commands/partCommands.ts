import { freshId } from '../freshId.ts';
import { isPanel, type PartEntry } from '../parts.ts';
import type { CandidateEntry, MeasuredEntry, Project } from '../schema.ts';
import { partOf, withoutSwaps, withPart } from './change.ts';
import { command, refuse } from './command.ts';
import { makeOf, nameOfMake, NO_FITTINGS, presentFittings, presentMake, withFittingsOf, withMake } from './make.ts';
import { patched, type Patch } from './patch.ts';
import type { New } from './surfaceCommands.ts';

/** What a wall, door or the like is made of: an assembly, or a laboratory curve in its place. */
export const setPart = command<
  { part: string } & ({ assembly: string } | { measured: MeasuredEntry } | { path: string })
>('Choose a make-up', (project, args) => {
  const before = partOf(project, args.part);
  if (!isPanel(before)) return refuse(`${before.name} is a gap or hole: it has sizes instead of a make-up.`);
  const make =
    'assembly' in args
      ? { assembly: args.assembly }
      : 'path' in args
        ? { path: args.path }
        : { measured: args.measured };
  return withPart(
    project,
    args.part,
    (part) =>
      patched<PartEntry>(part, {
        assembly: undefined,
        measured: undefined,
        path: undefined,
        ...('assembly' in make ? {} : NO_FITTINGS),
        ...make,
      }) as typeof part,
  );
});

export const addCandidate = command<{ part: string; candidate: New<CandidateEntry> }>(
  ({ candidate }) => `Add ${candidate.name} as a candidate`,
  (project, { part, candidate }) => {
    const before = partOf(project, part).candidates ?? [];
    const ids = before.map((it) => it.id);
    const added: CandidateEntry = { ...candidate, id: candidate.id ?? freshId(candidate.name, ids) };
    return withCandidates(project, part, [...before, added]);
  },
);

export const removeCandidate = command<{ part: string; candidate: string }>(
  'Remove a candidate',
  (project, { part, candidate }) => {
    const gone = candidateOf(project, part, candidate);
    const kept = (partOf(project, part).candidates ?? []).filter((it) => it !== gone);
    return withoutSwap(withCandidates(project, part, kept), part, candidate);
  },
);

export const setCandidate = command<{ part: string; candidate: string; patch: Patch<Omit<CandidateEntry, 'id'>> }>(
  'Change a candidate',
  (project, { part, candidate, patch }) => {
    const before = candidateOf(project, part, candidate);
    const list = partOf(project, part).candidates ?? [];
    return withCandidates(
      project,
      part,
      list.map((it) => (it === before ? patched<CandidateEntry>(it, patch) : it)),
    );
  },
);

/** The candidate becomes what the part is; what it was becomes a candidate in its place. */
export const adoptCandidate = command<{ part: string; candidate: string }>(
  'Adopt a candidate',
  (project, { part, candidate }) => adopt(project, part, candidate),
);

export const adopt = (project: Project, part: string, candidate: string): Project => {
  const chosen = candidateOf(project, part, candidate);
  const before = partOf(project, part);
  const list = before.candidates ?? [];
  const name = nameOfMake(project, before);
  const former = {
    id: freshId(
      name,
      list.map((it) => it.id),
    ),
    name,
    ...presentMake(before),
    ...presentFittings(before, chosen),
  };
  const next = withPart(project, part, (it) => withFittingsOf(withMake(it, makeOf(chosen)), chosen));
  const swapped = withCandidates(
    next,
    part,
    list.map((it) => (it === chosen ? former : it)),
  );
  return withoutSwap(swapped, part, candidate);
};

const candidateOf = (project: Project, part: string, id: string): CandidateEntry => {
  const owner = partOf(project, part);
  const found = owner.candidates?.find((candidate) => candidate.id === id);
  return found ?? refuse(`${owner.name} has no candidate "${id}".`);
};

const withCandidates = (project: Project, part: string, candidates: CandidateEntry[]): Project =>
  withPart(
    project,
    part,
    (it) => patched<PartEntry>(it, { candidates: candidates.length ? candidates : undefined }) as typeof it,
  );

const withoutSwap = (project: Project, part: string, candidate: string): Project =>
  withoutSwaps(project, (p, c) => p === part && c === candidate);
