import type { Database } from 'better-sqlite3';
import type { Labels, ProjectRow } from './rows.ts';
import { refusal } from './storeRefusal.ts';

/** Steps kept of each project; older ones are dropped as new ones come. */
export const HISTORY_LIMIT = 500;

/** The steps of a project's history: whole documents, so that any one can be read without the others. */
export interface History {
  readonly add: (project: string, step: number, label: string, at: string, document: unknown) => void;
  readonly document: (row: ProjectRow, step: number) => unknown;
  readonly labels: (row: ProjectRow) => Labels;
  /** the step before (-1) or after (+1) the head; null at the end of the history */
  readonly neighbour: (row: ProjectRow, direction: -1 | 1) => number | null;
}

export const createHistory = (database: Database): History => {
  const insert = database.prepare('INSERT INTO edit (project, step, label, at, document) VALUES (?, ?, ?, ?, ?)');
  const dropLater = database.prepare('DELETE FROM edit WHERE project = ? AND step >= ?');
  const dropOld = database.prepare('DELETE FROM edit WHERE project = ? AND step <= ?');
  const document = database.prepare<[string, number], { document: string }>(
    'SELECT document FROM edit WHERE project = ? AND step = ?',
  );
  const label = database.prepare<[string, number | null], { label: string }>(
    'SELECT label FROM edit WHERE project = ? AND step = ?',
  );
  const before = database.prepare<[string, number], { step: number | null }>(
    'SELECT max(step) AS step FROM edit WHERE project = ? AND step < ?',
  );
  const after = database.prepare<[string, number], { step: number | null }>(
    'SELECT min(step) AS step FROM edit WHERE project = ? AND step > ?',
  );

  const neighbour = (row: ProjectRow, direction: -1 | 1): number | null =>
    (direction < 0 ? before : after).get(row.id, row.head)?.step ?? null;
  const labelOf = (project: string, step: number | null): string | null => label.get(project, step)?.label ?? null;

  return {
    neighbour,
    add: (project, step, what, at, content) => {
      dropLater.run(project, step);
      insert.run(project, step, what, at, JSON.stringify(content));
      dropOld.run(project, step - HISTORY_LIMIT);
    },
    document: (row, step) => {
      const found = document.get(row.id, step);
      try {
        if (found) return JSON.parse(found.document) as unknown;
      } catch {
        // said below, as for a missing row
      }
      throw refusal(
        'store-damaged',
        `Step ${step} of the project “${row.name}” cannot be read: its row in the store is damaged. Undo to the step before it, or put back a copy of the store from a backup.`,
      );
    },
    labels: (row) => ({
      undoLabel: neighbour(row, -1) === null ? null : labelOf(row.id, row.head),
      redoLabel: labelOf(row.id, neighbour(row, 1)),
    }),
  };
};
