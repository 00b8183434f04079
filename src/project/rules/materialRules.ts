import { fault, type Fault, type Path } from '../fault.ts';
import { findMaterial, materialIds } from '../library.ts';
import { suggestion } from '../nearest.ts';
import type { MaterialEntry, Project } from '../schema.ts';
import { RIGID_ADHESIVE } from '../schema.ts';

type Kind = MaterialEntry['kind'];

const PLACE: Readonly<Record<Kind, string>> = {
  board: 'a board layer',
  porous: 'the filling of a cavity',
  viscoelastic: 'an interlayer between two boards',
};

/** What is wrong with naming this material in this place; null where nothing is. */
export const materialFault = (project: Project, id: string, path: Path, kinds: readonly Kind[]): Fault | null => {
  const material = findMaterial(project, id);
  if (id === RIGID_ADHESIVE)
    return fault(
      path,
      id,
      `a material of kind ${kinds.join(' or ')}`,
      'A rigid bond is an interlayer between two boards.',
    );
  if (!material) {
    const fitting = materialIds(project).filter((it) => kinds.some((kind) => kind === findMaterial(project, it)?.kind));
    const meant = suggestion(id, fitting);
    return fault(
      path,
      id,
      'the id of a library material or of one under "materials"',
      meant ||
        `Choose one of the library, for example ${fitting.slice(0, 3).join(', ')}, or describe it under "materials".`,
    );
  }
  if (kinds.includes(material.kind)) return null;
  return fault(
    path,
    id,
    `a material of kind ${kinds.join(' or ')}`,
    `${material.name} is ${material.kind}: its place is ${PLACE[material.kind]}.`,
  );
};

/** The word for a rigid bond cannot be a material of the project's own. */
export const materialRules = (project: Project): readonly Fault[] =>
  Object.hasOwn(project.materials ?? {}, RIGID_ADHESIVE)
    ? [
        fault(
          ['materials', RIGID_ADHESIVE],
          RIGID_ADHESIVE,
          'any other id',
          'This word means a rigid bond; rename the material.',
        ),
      ]
    : [];
