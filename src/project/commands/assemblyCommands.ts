import { freshId } from '../freshId.ts';
import { isPanel, partsOf } from '../parts.ts';
import type { AssemblyEntry, Project } from '../schema.ts';
import { assemblyOf, withAssembly } from './change.ts';
import { command, refuse } from './command.ts';
import { patched, without } from './patch.ts';

/**
 * Adds an assembly under an id made from its name, unless one is given. With `beside` it is laid as the last column of
 * the comparison, after those named (the last of them give way where there are four).
 */
export const addAssembly = command<{ assembly: AssemblyEntry; id?: string; beside?: readonly string[] }>(
  ({ assembly }) => `Add ${assembly.name}`,
  (project, { assembly, id, beside }) => {
    const key = id ?? freshId(assembly.name, Object.keys(project.assemblies));
    if (Object.hasOwn(project.assemblies, key)) return refuse(`There is already a make-up "${key}" in this project.`);
    const compare = beside ? { compare: [...new Set([...beside.slice(0, 3), key])] } : {};
    return patched(project, { assemblies: { ...project.assemblies, [key]: assembly }, ...compare });
  },
);

export const duplicateAssembly = command<{ assembly: string; name?: string; id?: string; beside?: readonly string[] }>(
  'Copy a make-up',
  (project, { assembly, name, id, beside }) => {
    const before = assemblyOf(project, assembly);
    const copy = patched(before, { name: name ?? `${before.name} (copy)`.slice(0, 200) });
    return addAssembly.apply(project, {
      assembly: copy,
      ...(id === undefined ? {} : { id }),
      ...(beside ? { beside } : {}),
    });
  },
);

export const renameAssembly = command<{ assembly: string; name: string }>('Rename a make-up', (project, args) =>
  withAssembly(project, args.assembly, (assembly) => patched(assembly, { name: args.name.trim() })),
);

export const setAssemblyNote = command<{ assembly: string; note: string }>('Change a note', (project, args) =>
  withAssembly(project, args.assembly, (it) => patched(it, { note: args.note === '' ? undefined : args.note })),
);

/** The user's own prices per m²; null goes back to the library's illustrative ones. */
export const setAssemblyPrice = command<{
  assembly: string;
  price_per_m2?: number | null;
  labour_per_m2?: number | null;
}>('Change a price', (project, { assembly, ...prices }) =>
  withAssembly(project, assembly, (before) =>
    patched(before, Object.fromEntries(Object.entries(prices).map(([key, price]) => [key, price ?? undefined]))),
  ),
);

/** Names of the parts and candidates that use an assembly. */
export const usersOfAssembly = (project: Project, id: string): readonly string[] =>
  partsOf(project)
    .flatMap((part) => [
      ...(isPanel(part) && part.assembly === id ? [part.name] : []),
      ...('second' in part && part.second?.assembly === id ? [`the second leaf of ${part.name}`] : []),
      ...(part.candidates ?? [])
        .filter((candidate) => [candidate.assembly, candidate.fittings?.second?.assembly].includes(id))
        .map((candidate) => `the candidate ${candidate.name} of ${part.name}`),
    ])
    .concat(
      (project.flanking ?? [])
        .filter(({ inside, beyond }) => [inside.assembly, beyond.assembly].includes(id))
        .map((path) => path.name),
    )
    .concat(
      (project.vents ?? [])
        .filter(({ elements }) => elements.some((element) => 'casing' in element && element.casing === id))
        .map((vent) => vent.name),
    );

export const removeAssembly = command<{ assembly: string }>('Remove a make-up', (project, { assembly }) => {
  const gone = assemblyOf(project, assembly);
  const users = usersOfAssembly(project, assembly);
  if (users.length > 0)
    refuse(`${gone.name} cannot be removed: it is used by ${users.join(', ')}. Give those another make-up first.`);
  const compare = project.compare?.filter((id) => id !== assembly);
  return patched(project, {
    assemblies: without(project.assemblies, assembly),
    compare: compare && compare.length > 0 ? compare : undefined,
  });
});
