import { fault, listText, type Fault, type Path } from '../fault.ts';
import { suggestion } from '../nearest.ts';
import { findPart, partsOf } from '../parts.ts';
import type { OptionEntry, Project } from '../schema.ts';
import { sources } from '../sources.ts';
import { assemblyFault } from './partRules.ts';

const swapFaults = (project: Project, option: OptionEntry, path: Path): readonly Fault[] =>
  Object.entries(option.swaps).flatMap(([id, candidate]) => {
    const place = [...path, 'swaps', id];
    const part = findPart(project, id);
    const partIds = partsOf(project).map((it) => it.id);
    if (!part) return [fault(place, id, `the id of a part: ${listText(partIds)}`, suggestion(id, partIds))];
    const ids = (part.candidates ?? []).map((it) => it.id);
    if (ids.includes(candidate)) return [];
    return [
      fault(place, candidate, `the id of a candidate of ${part.name}: ${listText(ids)}`, suggestion(candidate, ids)),
    ];
  });

/** Options swap what exists for what exists; what is compared and the source exist too. */
export const choiceRules = (project: Project): readonly Fault[] => {
  const options = project.options ?? [];
  const compare = project.compare ?? [];
  const known = Object.keys(sources);
  const { source } = project;
  return [
    ...options.flatMap((option, i) => [
      ...(options.findIndex((other) => other.id === option.id) === i
        ? []
        : [fault(['options', i, 'id'], option.id, 'an id that no other option has', 'Choose another id.')]),
      ...swapFaults(project, option, ['options', i]),
    ]),
    ...compare.flatMap((id, i) => assemblyFault(project, id, ['compare', i]) ?? []),
    ...(source === undefined || known.includes(source)
      ? []
      : [fault(['source'], source, `one of ${listText(known)}`, suggestion(source, known))]),
  ];
};
