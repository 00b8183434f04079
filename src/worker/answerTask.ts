import { createEvaluator } from '../engine/evaluate.ts';
import type { BoxResult } from '../engine/openings/index.ts';
import { toAssembly, toBuild } from '../project/toEngine.ts';
import { breatheOf } from './breathe/breatheOf.ts';
import { explain } from './explain/explain.ts';
import { guidesOf } from './explain/guides.ts';
import { secondMethodOf } from './explain/secondMethodOf.ts';
import type { TaskName, Tasks, WorkerRequest } from './protocol.ts';

type Answerers = { readonly [T in TaskName]: (ask: Tasks[T]['ask']) => Tasks[T]['answer'] };

/**
 * Answers the tasks of the protocol with one evaluator, which remembers what it has computed.
 * @param now milliseconds of a running clock, for the time an evaluation took
 */
export const createAnswerTask = (now: () => number): ((request: WorkerRequest) => unknown) => {
  const boxes = new Map<string, BoxResult>();
  const evaluator = createEvaluator((box) => boxes.get(JSON.stringify(box)) ?? null);
  const answerers: Answerers = {
    evaluate: ({ project, resolution, predict }) => {
      const began = now();
      const shell = project.surfaces.length > 0 ? evaluator.shell(toBuild(project), resolution) : null;
      const predictions = Object.fromEntries(
        predict.flatMap((id) => {
          const entry = Object.hasOwn(project.assemblies, id) ? project.assemblies[id] : undefined;
          return entry ? [[id, evaluator.predict(toAssembly(entry, project), resolution)] as const] : [];
        }),
      );
      return { shell, predictions, milliseconds: now() - began };
    },
    plan: ({ project }) => evaluator.plan(toBuild(project), 'full'),
    explain: ({ project, what }) => explain(evaluator, project, what),
    guides: ({ project, assembly }) => guidesOf(evaluator, project, assembly),
    breathe: ({ project, resolution }) => breatheOf(evaluator, project, resolution),
    learn: ({ boxes: solved }) => {
      for (const { box, result } of solved) boxes.set(JSON.stringify(box), result);
      return null;
    },
    secondMethod: ({ project, assembly }) => secondMethodOf(evaluator, project, assembly),
  };
  const answer = <T extends TaskName>({ task, ask }: WorkerRequest<T>): Tasks[T]['answer'] => answerers[task](ask);
  return answer;
};
