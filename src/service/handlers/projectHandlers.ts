import type { Handlers } from '../../contract/dispatcher.ts';
import type { OpenedProject } from '../../contract/methods.ts';
import { freshId } from '../../project/freshId.ts';
import { checkedProject, projectFromText } from '../checkedProject.ts';
import type { Store } from '../ports.ts';

type ProjectHandlers = Pick<Handlers, Extract<keyof Handlers, `projects.${string}`>>;

/** What the store gives back, read as a project of the present format. @throws {Refusal} */
const present = async (opening: Promise<OpenedProject>): Promise<OpenedProject> => {
  const opened = await opening;
  return { ...opened, document: checkedProject(opened.document) };
};

/** Keeping projects: every document is checked on its way in and on its way out. */
export const projectHandlers = (store: () => Store): ProjectHandlers => ({
  'projects.list': async () => [...(await store().list())],
  'projects.create': async ({ document }) => store().create(checkedProject(document), 'New project'),
  'projects.open': ({ id }) => present(store().open(id)),
  'projects.revision': async ({ id }) => ({ revision: await store().revision(id) }),
  'projects.save': async ({ document, ...step }) => store().save({ ...step, document: checkedProject(document) }),
  'projects.undo': (step) => present(store().undo(step)),
  'projects.redo': (step) => present(store().redo(step)),
  'projects.duplicate': async ({ id, name }) => {
    const { document } = await store().open(id);
    return store().create(checkedProject({ ...checkedProject(document), name }), 'Copy of a project');
  },
  'projects.delete': ({ id }) => store().delete(id),
  'projects.restore': ({ id }) => store().restore(id),
  'projects.import': async ({ text }) => store().create(projectFromText(text), 'Imported project'),
  'projects.export': async ({ id }) => {
    const project = checkedProject((await store().open(id)).document);
    return {
      fileName: `${freshId(project.name, [])}.lullwright.json`,
      text: `${JSON.stringify(project, null, 2)}\n`,
    };
  },
});
