import { Refusal } from '../../contract/client.ts';
import type { Handlers } from '../../contract/dispatcher.ts';
import { listText } from '../../project/fault.ts';
import { checkedProject } from '../checkedProject.ts';
import type { Example, Store } from '../ports.ts';

/** Example projects: opening one makes a project of the user's own. */
export const exampleHandlers = (
  examples: readonly Example[],
  store: () => Store,
): Pick<Handlers, 'examples.list' | 'examples.open'> => ({
  'examples.list': () => examples.map(({ key, name, what }) => ({ key, name, what })),
  'examples.open': async ({ key }) => {
    const example = examples.find((it) => it.key === key);
    const keys = examples.map((it) => it.key);
    if (!example)
      throw new Refusal({ code: 'not-found', sentence: `There is no example "${key}": ${listText(keys)}.` });
    return store().create(checkedProject(example.document), 'Opened the example');
  },
});
