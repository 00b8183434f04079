import type { Evaluator } from '../../engine/evaluate.ts';
import { contradictions, secondMethod } from '../../engine/transmission/index.ts';
import type { Project } from '../../project/schema.ts';
import type { SecondOpinion } from '../protocol.ts';
import { assemblyOf, predicted } from './predicted.ts';

/** A make-up by the other school of prediction, and where the two contradict each other; null where there is none. */
export const secondMethodOf = (evaluator: Evaluator, project: Project, id: string): SecondOpinion | null => {
  const method = secondMethod(assemblyOf(project, id));
  return method && { method, contradictions: contradictions(predicted(evaluator, project, id).R, method) };
};
