import { Refusal } from '../contract/client.ts';
import { createDispatcher, type Dispatcher } from '../contract/dispatcher.ts';
import { createEvaluator, type Evaluator } from '../engine/evaluate.ts';
import { acousticHandlers } from './handlers/acousticHandlers.ts';
import { boxHandlers } from './handlers/boxHandlers.ts';
import { breatheHandlers } from './handlers/breatheHandlers.ts';
import { designHandlers } from './handlers/designHandlers.ts';
import { exampleHandlers } from './handlers/exampleHandlers.ts';
import { projectHandlers } from './handlers/projectHandlers.ts';
import type { Ports, Store } from './ports.ts';

const WITHOUT_STORE = 'No projects are kept in this session; give the project as a file instead.';

/** Everything the program can be asked, over the ports of its host. */
export const createService = (ports: Ports, evaluator: Evaluator = createEvaluator()): Dispatcher => {
  const store = (): Store => {
    if (ports.store) return ports.store;
    throw new Refusal({ code: 'bad-request', sentence: WITHOUT_STORE });
  };
  return createDispatcher(
    {
      'app.info': () => ({ ...ports.about }),
      ...projectHandlers(store),
      ...exampleHandlers(ports.examples, store),
      ...acousticHandlers(evaluator),
      ...boxHandlers,
      ...breatheHandlers(evaluator),
      ...designHandlers,
    },
    ports.onFault,
  );
};
