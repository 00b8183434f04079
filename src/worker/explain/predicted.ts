import type { Assembly } from '../../engine/assembly/index.ts';
import type { Evaluator } from '../../engine/evaluate.ts';
import type { Prediction } from '../../engine/transmission/index.ts';
import type { Project } from '../../project/schema.ts';
import { toAssembly } from '../../project/toEngine.ts';

/** The make-up with this id in the engine's terms. @throws Error with a sentence's beginning */
export const assemblyOf = (project: Project, id: string): Assembly => {
  const entry = Object.hasOwn(project.assemblies, id) ? project.assemblies[id] : undefined;
  if (!entry) throw new Error(`there is no make-up "${id}" in this project any more`);
  return toAssembly(entry, project);
};

/** The make-up predicted at full resolution. */
export const predicted = (evaluator: Evaluator, project: Project, id: string): Prediction =>
  evaluator.predict(assemblyOf(project, id), 'full');
