import { freshId } from '../freshId.ts';
import type { MaterialEntry, Project } from '../schema.ts';
import { command, refuse } from './command.ts';
import { patched, without } from './patch.ts';

const materialOf = (project: Project, id: string): MaterialEntry => {
  const found = project.materials && Object.hasOwn(project.materials, id) ? project.materials[id] : undefined;
  return found ?? refuse(`There is no material "${id}" in this project.`);
};

/** Names of the assemblies that use a material. */
export const usersOfMaterial = (project: Project, id: string): readonly string[] =>
  Object.values(project.assemblies)
    .filter(({ layers }) =>
      layers.some((layer) => (layer.kind === 'cavity' ? layer.fill?.material === id : layer.material === id)),
    )
    .map((assembly) => assembly.name)
    .concat(
      (project.vents ?? [])
        .filter(({ elements }) => elements.some((it) => 'lining' in it && it.lining?.material === id))
        .map((vent) => vent.name),
    );

/** Adds a material of the project's own; one with the id of a library material takes its place here. */
export const addMaterial = command<{ material: MaterialEntry; id?: string }>(
  ({ material }) => `Add ${material.name}`,
  (project, { material, id }) => {
    const own = project.materials ?? {};
    const key = id ?? freshId(material.name, Object.keys(own));
    if (Object.hasOwn(own, key)) return refuse(`There is already a material "${key}" in this project.`);
    return patched(project, { materials: { ...own, [key]: material } });
  },
);

export const setMaterial = command<{ material: string; entry: MaterialEntry }>(
  'Change a material',
  (project, { material, entry }) => {
    materialOf(project, material);
    return patched(project, { materials: { ...project.materials, [material]: entry } });
  },
);

export const removeMaterial = command<{ material: string }>('Remove a material', (project, { material }) => {
  const gone = materialOf(project, material);
  const users = usersOfMaterial(project, material);
  if (users.length > 0)
    refuse(`${gone.name} cannot be removed: it is used in ${users.join(', ')}. Choose another material there first.`);
  const kept = without(project.materials ?? {}, material);
  return patched(project, { materials: Object.keys(kept).length > 0 ? kept : undefined });
});
