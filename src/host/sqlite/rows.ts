import type { OpenedProject, ProjectSummary, SavedProject } from '../../contract/methods.ts';

/** A project's own row; `head` is the step of its history that is shown. */
export interface ProjectRow {
  readonly id: string;
  readonly name: string;
  readonly created_at: string;
  readonly saved_at: string;
  readonly revision: number;
  readonly head: number;
  readonly deleted: number;
}

/** Labels of the step at the head and of the one after it; what undo and redo would take back or bring. */
export interface Labels {
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
}

export const toSummary = (row: ProjectRow): ProjectSummary => ({
  id: row.id,
  name: row.name,
  savedAt: row.saved_at,
  createdAt: row.created_at,
  revision: row.revision,
  deleted: row.deleted !== 0,
});

export const toSaved = (row: ProjectRow, labels: Labels): SavedProject => ({
  id: row.id,
  revision: row.revision,
  savedAt: row.saved_at,
  undoLabel: labels.undoLabel,
  redoLabel: labels.redoLabel,
});

export const toOpened = (row: ProjectRow, labels: Labels, document: unknown): OpenedProject => ({
  ...toSaved(row, labels),
  document,
});
