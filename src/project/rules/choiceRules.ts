import { fault, listText, type Fault, type Path } from '../fault.ts';
import { suggestion } from '../nearest.ts';
import { partsOf, type PartEntry } from '../parts.ts';
import type { Project } from '../schema.ts';
import { sources } from '../sources.ts';
import { assemblyFault } from './partRules.ts';

const swapFault = (part: PartEntry, candidate: string, path: Path): Fault | null => {
  const ids = (part.candidates ?? []).map((it) => it.id);
  if (ids.includes(candidate)) return null;
  return fault(path, candidate, `the id of a candidate of ${part.name}: ${listText(ids)}`, suggestion(candidate, ids));
};

/** An option swaps parts that exist for candidates of theirs; its id is its own. */
function* optionFaults(project: Project): Generator<Fault> {
  const parts = new Map(partsOf(project).map((part) => [part.id, part]));
  const partIds = [...parts.keys()];
  const seen = new Set<string>();
  for (const [i, { id, swaps }] of (project.options ?? []).entries()) {
    if (seen.has(id)) yield fault(['options', i, 'id'], id, 'an id that no other option has', 'Choose another id.');
    seen.add(id);
    for (const [key, candidate] of Object.entries(swaps)) {
      const place: Path = ['options', i, 'swaps', key];
      const part = parts.get(key);
      const wrong = part
        ? swapFault(part, candidate, place)
        : fault(place, key, `the id of a part: ${listText(partIds)}`, suggestion(key, partIds));
      if (wrong) yield wrong;
    }
  }
}

/** Options, what is compared, and the source: all of it exists. */
export function* choiceRules(project: Project): Generator<Fault> {
  yield* optionFaults(project);
  for (const [i, id] of (project.compare ?? []).entries()) {
    const wrong = assemblyFault(project, id, ['compare', i]);
    if (wrong) yield wrong;
  }
  const { source } = project;
  const known = Object.keys(sources);
  if (source !== undefined && !known.includes(source))
    yield fault(['source'], source, `one of ${listText(known)}`, suggestion(source, known));
}
