import { Refusal } from '../contract/client.ts';
import type { ContractError } from '../contract/errors.ts';
import type { OpenedProject, ProjectSummary, SavedProject } from '../contract/methods.ts';
import type { Example } from '../project/examples.ts';
import type { Project } from '../project/schema.ts';

/** One step: a whole document that has been checked, what the edit was called, and the revision it started from. */
export interface Edit {
  readonly id: string;
  /** the revision the caller has seen; any other at the head is a conflict */
  readonly revision: number;
  readonly label: string;
  readonly document: Project;
}

export interface Step {
  readonly id: string;
  readonly revision: number;
}

/**
 * Keeps projects. Each has a history of whole documents with the label of the edit that led to each, and a head that
 * undo and redo move; the head is what `open` gives. Every change (save, undo, redo) raises the revision by one, within
 * one transaction: after an answer the change is kept, without one nothing has changed. Saving drops the steps that
 * redo would have brought. The revision starts at 1. A rejected promise carries a `StoreRefusal`.
 *
 * A document comes back exactly as it went in; the service checks and migrates it.
 */
export interface Store {
  /** newest saved first, deleted ones too */
  list(): Promise<readonly ProjectSummary[]>;
  /** @throws {StoreRefusal} store-locked, store-read-only, store-full */
  create(document: Project, label: string): Promise<OpenedProject>;
  /** @throws {StoreRefusal} not-found; store-damaged where the row cannot be read */
  open(id: string): Promise<OpenedProject>;
  /** @throws {StoreRefusal} not-found */
  revision(id: string): Promise<number>;
  /** @throws {StoreRefusal} conflict, not-found, store-… */
  save(edit: Edit): Promise<SavedProject>;
  /** @throws {StoreRefusal} nothing-to-undo, conflict, not-found, store-… */
  undo(step: Step): Promise<OpenedProject>;
  /** @throws {StoreRefusal} nothing-to-undo (with a sentence about redo), conflict, not-found, store-… */
  redo(step: Step): Promise<OpenedProject>;
  /** Marks as deleted; a deleted project is listed, and opened by id, but its history stays. @throws {StoreRefusal} */
  delete(id: string): Promise<ProjectSummary>;
  /** @throws {StoreRefusal} */
  restore(id: string): Promise<ProjectSummary>;
}

/** What the program says of itself; the host knows. */
export interface About {
  readonly version: string;
  readonly store: string;
  readonly runtime: string;
}

/** What the service needs of its host; without a store only the reckoning methods answer. */
export interface Ports {
  readonly about: About;
  readonly store: Store | null;
  readonly examples: readonly Example[];
  /** told of every fault of ours, so that the host can write it down; the caller gets a plain sentence */
  readonly onFault?: (fault: unknown) => void;
}

/** A store's reasoned refusal: one of the contract's codes with a sentence for the user. */
export class StoreRefusal extends Refusal {
  constructor(error: ContractError) {
    super(error);
    this.name = 'StoreRefusal';
  }
}

export type { Example };
