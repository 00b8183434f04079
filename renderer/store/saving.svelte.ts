import { Refusal, type Client } from '../../src/contract/client.ts';
import type { ContractError } from '../../src/contract/errors.ts';
import type { SavedProject } from '../../src/contract/methods.ts';
import type { Project } from '../../src/project/schema.ts';

interface Edit {
  readonly label: string;
  readonly document: Project;
}

/** Saves edits one after the other, each a history step; holds them back after a refusal until it is resolved. */
export class Saving {
  head = $state.raw<SavedProject | null>(null);
  waiting = $state(0);
  refusal = $state.raw<ContractError | null>(null);
  #edits: Edit[] = [];
  #running: Promise<void> | null = null;
  readonly #client: Client;

  constructor(client: Client) {
    this.#client = client;
  }

  begin(head: SavedProject): void {
    this.head = head;
    this.#edits = [];
    this.waiting = 0;
    this.refusal = null;
  }

  end(): void {
    this.head = null;
    this.#edits = [];
    this.waiting = 0;
    this.refusal = null;
  }

  add(label: string, document: Project): void {
    this.#edits.push({ label, document });
    this.waiting = this.#edits.length;
    if (!this.refusal) void this.flush();
  }

  /** Resolves when every edit is safely kept, or when one was refused. */
  flush(): Promise<void> {
    this.refusal = null;
    this.#running ??= this.#drain().finally(() => (this.#running = null));
    return this.#running;
  }

  async #drain(): Promise<void> {
    for (let edit = this.#edits[0]; edit && this.head; edit = this.#edits[0]) {
      const { id, revision } = this.head;
      try {
        this.head = await this.#client.call('projects.save', { id, revision, ...edit });
      } catch (fault) {
        this.refusal = fault instanceof Refusal ? fault.error : { code: 'internal', sentence: String(fault) };
        return;
      }
      this.#edits.shift();
      this.waiting = this.#edits.length;
    }
  }
}
