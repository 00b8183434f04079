import type { ContractError } from '../../src/contract/errors.ts';
import type { OpenedProject, ProjectSummary, SavedProject } from '../../src/contract/methods.ts';
import type { Project } from '../../src/project/schema.ts';
import { StoreRefusal, type Step, type Store } from '../../src/service/ports.ts';

interface Kept {
  readonly id: string;
  readonly history: { readonly label: string; readonly document: Project }[];
  head: number;
  revision: number;
  deleted: boolean;
}

const MOMENT = '2026-01-01T00:00:00.000Z';

const refuse = (code: ContractError['code'], sentence: string): never => {
  throw new StoreRefusal({ code, sentence });
};

/** The store port kept in memory: what the service is tested against, and what the other stores must do alike. */
export const createMemoryStore = (): Store => {
  const all = new Map<string, Kept>();

  const find = (id: string): Kept => all.get(id) ?? refuse('not-found', `There is no project ${id}.`);
  const seen = ({ id, revision }: Step): Kept => {
    const kept = find(id);
    if (kept.revision !== revision) refuse('conflict', 'Another window has changed this project.');
    return kept;
  };
  const saved = (kept: Kept): SavedProject => ({
    id: kept.id,
    revision: kept.revision,
    savedAt: MOMENT,
    undoLabel: kept.head > 0 ? (kept.history[kept.head]?.label ?? null) : null,
    redoLabel: kept.history[kept.head + 1]?.label ?? null,
  });
  const opened = (kept: Kept): OpenedProject => ({
    ...saved(kept),
    document: structuredClone(kept.history[kept.head]?.document),
  });
  const summary = (kept: Kept): ProjectSummary => ({
    id: kept.id,
    name: kept.history[kept.head]?.document.name ?? '',
    savedAt: MOMENT,
    createdAt: MOMENT,
    revision: kept.revision,
    deleted: kept.deleted,
  });
  const move = (step: Step, by: 1 | -1): OpenedProject => {
    const kept = seen(step);
    if (!kept.history[kept.head + by]) refuse('nothing-to-undo', 'There is no such step.');
    kept.head += by;
    kept.revision += 1;
    return opened(kept);
  };
  const mark = (id: string, deleted: boolean): ProjectSummary => {
    const kept = find(id);
    kept.deleted = deleted;
    return summary(kept);
  };
  const soon = <T>(work: () => T): Promise<T> => Promise.resolve().then(work);

  return {
    list: () => soon(() => [...all.values()].map(summary).reverse()),
    create: (document, label) =>
      soon(() => {
        const id = `project-${all.size + 1}`;
        const kept: Kept = { id, history: [{ label, document }], head: 0, revision: 1, deleted: false };
        all.set(id, kept);
        return opened(kept);
      }),
    open: (id) => soon(() => opened(find(id))),
    revision: (id) => soon(() => find(id).revision),
    save: (edit) =>
      soon(() => {
        const kept = seen(edit);
        kept.history.splice(kept.head + 1, Number.POSITIVE_INFINITY, { label: edit.label, document: edit.document });
        kept.head += 1;
        kept.revision += 1;
        return saved(kept);
      }),
    undo: (step) => soon(() => move(step, -1)),
    redo: (step) => soon(() => move(step, 1)),
    delete: (id) => soon(() => mark(id, true)),
    restore: (id) => soon(() => mark(id, false)),
  };
};
