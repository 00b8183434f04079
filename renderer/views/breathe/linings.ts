import { findMaterial, materialIds } from '../../../src/project/library.ts';
import type { Project } from '../../../src/project/schema.ts';

/** Absorbers that a lining may be of. */
export const linings = (project: Project): readonly { readonly value: string; readonly label: string }[] =>
  materialIds(project).flatMap((id) => {
    const entry = findMaterial(project, id);
    return entry?.kind === 'porous' ? [{ value: id, label: entry.name }] : [];
  });
