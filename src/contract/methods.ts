import * as v from 'valibot';
import { breatheResult } from './breatheResults.ts';
import { designParams, designResult } from './designResults.ts';
import { boxResult, predictResult, rateResult, shellResult } from './results.ts';
import { uncertaintyParams } from './uncertaintyResults.ts';

/** Everything that can be asked of the program: one row a method. Client, dispatcher and help derive from it. */

const text = v.string();
const count = v.pipe(v.number(), v.integer(), v.minValue(0));
/** A document travels as JSON; the service checks it against the project schema. */
const document = v.unknown();

const summary = v.strictObject({
  id: text,
  name: text,
  savedAt: text,
  createdAt: text,
  revision: count,
  deleted: v.boolean(),
});

/** A project opened: the document at the head of its history, and what undo and redo would do. */
const opened = v.strictObject({
  id: text,
  document,
  revision: count,
  savedAt: text,
  undoLabel: v.nullable(text),
  redoLabel: v.nullable(text),
});

const saved = v.omit(opened, ['document']);

const method = <P extends v.GenericSchema, R extends v.GenericSchema>(
  kind: 'query' | 'command',
  what: string,
  params: P,
  result: R,
) => ({ kind, what, params, result });

export const methods = {
  'app.info': method(
    'query',
    'Version and where projects are kept',
    v.strictObject({}),
    v.strictObject({ version: text, store: text, runtime: text }),
  ),
  'projects.list': method(
    'query',
    'All projects, newest first; deleted ones too',
    v.strictObject({}),
    v.array(summary),
  ),
  'projects.create': method('command', 'A new project from a document', v.strictObject({ document }), opened),
  'projects.open': method('query', 'A project at the head of its history', v.strictObject({ id: text }), opened),
  'projects.revision': method(
    'query',
    'Revision of a project, to notice changes by another window',
    v.strictObject({ id: text }),
    v.strictObject({ revision: count }),
  ),
  'projects.save': method(
    'command',
    'One edit: a history step in one transaction; refused if another window changed the project',
    v.strictObject({ id: text, revision: count, label: text, document }),
    saved,
  ),
  'projects.undo': method(
    'command',
    'One step back in the history',
    v.strictObject({ id: text, revision: count }),
    opened,
  ),
  'projects.redo': method(
    'command',
    'One step forward in the history',
    v.strictObject({ id: text, revision: count }),
    opened,
  ),
  'projects.duplicate': method('command', 'A copy under a new name', v.strictObject({ id: text, name: text }), opened),
  'projects.delete': method('command', 'Mark as deleted; can be restored', v.strictObject({ id: text }), summary),
  'projects.restore': method('command', 'Bring a deleted project back', v.strictObject({ id: text }), summary),
  'projects.import': method(
    'command',
    'A project file as text becomes a new project',
    v.strictObject({ text }),
    opened,
  ),
  'projects.export': method(
    'query',
    'The project as a file',
    v.strictObject({ id: text }),
    v.strictObject({ fileName: text, text }),
  ),
  'examples.list': method(
    'query',
    'The example projects',
    v.strictObject({}),
    v.array(v.strictObject({ key: text, name: text, what: text })),
  ),
  'examples.open': method('command', 'A new project from an example', v.strictObject({ key: text }), opened),
  predict: method(
    'query',
    'R of each assembly as a laboratory would report it',
    v.strictObject({ document, uncertainty: uncertaintyParams }),
    predictResult,
  ),
  shell: method(
    'query',
    'The whole shell, its parts and the one that limits it',
    v.strictObject({ document, uncertainty: uncertaintyParams }),
    shellResult,
  ),
  breathe: method(
    'query',
    'Vents and fresh air: sound through each vent, flows, CO2, heat, moisture, noise',
    v.strictObject({ document }),
    breatheResult,
  ),
  designVents: method(
    'query',
    'The smallest lined box for each vent opening that gives the air and spares the wall',
    v.strictObject({ document, ...designParams }),
    designResult,
  ),
  rate: method('query', 'Ratings of a measured curve given as CSV', v.strictObject({ csv: text }), rateResult),
  box: method(
    'query',
    'Transmission loss of one baffled ventilation box by wave solution',
    v.strictObject({ document }),
    boxResult,
  ),
} as const;

export type Methods = typeof methods;
export type MethodName = keyof Methods;
export type Params<M extends MethodName> = v.InferInput<Methods[M]['params']>;
export type Result<M extends MethodName> = v.InferOutput<Methods[M]['result']>;
export type OpenedProject = Result<'projects.open'>;
export type SavedProject = Result<'projects.save'>;
export type ProjectSummary = Result<'projects.list'>[number];
