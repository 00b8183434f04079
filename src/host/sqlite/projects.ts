import type { Database } from 'better-sqlite3';
import type { OpenedProject, ProjectSummary, SavedProject } from '../../contract/methods.ts';
import type { Project } from '../../project/schema.ts';
import type { Edit, Step } from '../../service/ports.ts';
import type { Outside } from './createSqliteStore.ts';
import { createHistory } from './history.ts';
import { toOpened, toSaved, toSummary, type ProjectRow } from './rows.ts';
import { refusal } from './storeRefusal.ts';

/** The store's work on an open database; every change is one transaction that takes the write lock at its start. */
export interface Projects {
  readonly list: () => readonly ProjectSummary[];
  readonly create: (document: Project, label: string) => OpenedProject;
  readonly open: (id: string) => OpenedProject;
  readonly revision: (id: string) => number;
  readonly save: (edit: Edit) => SavedProject;
  readonly move: (step: Step, direction: -1 | 1) => OpenedProject;
  readonly mark: (id: string, deleted: boolean) => ProjectSummary;
}

export const createProjects = (database: Database, { now, newId }: Outside): Projects => {
  const history = createHistory(database);
  const all = database.prepare<[], ProjectRow>('SELECT * FROM project ORDER BY saved_at DESC, created_at DESC, id');
  const one = database.prepare<[string], ProjectRow>('SELECT * FROM project WHERE id = ?');
  const insert = database.prepare(
    'INSERT INTO project (id, name, created_at, saved_at, revision, head) VALUES (?, ?, ?, ?, 1, 1)',
  );
  const advance = database.prepare(
    'UPDATE project SET name = ?, saved_at = ?, revision = revision + 1, head = ? WHERE id = ?',
  );
  const flag = database.prepare('UPDATE project SET deleted = ? WHERE id = ?');

  const required = (id: string): ProjectRow => {
    const row = one.get(id);
    if (!row) throw refusal('not-found', `There is no project with the id “${id}” in the store.`);
    return row;
  };
  const requireRevision = ({ id, revision }: Step): ProjectRow => {
    const row = required(id);
    if (row.revision !== revision)
      throw refusal(
        'conflict',
        `“${row.name}” was changed in another window meanwhile (revision ${row.revision}, this window has ${revision}). Open it again to go on from there, or duplicate it to keep both.`,
      );
    return row;
  };
  const opened = (id: string): OpenedProject => {
    const row = required(id);
    return toOpened(row, history.labels(row), history.document(row, row.head));
  };
  /** One transaction, the write lock taken first: nothing read inside it can grow stale. */
  const change = <T>(work: () => T): T => database.transaction(work).immediate();

  return {
    list: () => all.all().map(toSummary),
    open: opened,
    revision: (id) => required(id).revision,
    create: (document, label) =>
      change(() => {
        const id = newId();
        const at = now().toISOString();
        insert.run(id, document.name, at, at);
        history.add(id, 1, label, at, document);
        return opened(id);
      }),
    save: (edit) =>
      change(() => {
        const { id, head } = requireRevision(edit);
        const at = now().toISOString();
        history.add(id, head + 1, edit.label, at, edit.document);
        advance.run(edit.document.name, at, head + 1, id);
        const row = required(id);
        return toSaved(row, history.labels(row));
      }),
    move: (step, direction) =>
      change(() => {
        const row = requireRevision(step);
        const target = history.neighbour(row, direction);
        if (target === null)
          throw refusal(
            'nothing-to-undo',
            direction < 0 ? 'There is nothing left to undo.' : 'There is nothing to redo.',
          );
        const document = history.document(row, target);
        advance.run(nameOf(document) ?? row.name, now().toISOString(), target, row.id);
        return opened(row.id);
      }),
    mark: (id, deleted) =>
      change(() => {
        required(id);
        flag.run(deleted ? 1 : 0, id);
        return toSummary(required(id));
      }),
  };
};

const nameOf = (document: unknown): string | null =>
  typeof document === 'object' && document !== null && 'name' in document && typeof document.name === 'string'
    ? document.name
    : null;
