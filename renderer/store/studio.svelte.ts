import { createClient, Refusal, type Client } from '../../src/contract/client.ts';
import type { ContractError } from '../../src/contract/errors.ts';
import type { OpenedProject } from '../../src/contract/methods.ts';
import { checkProject } from '../../src/project/check.ts';
import { commands, type CommandArguments, type CommandName } from '../../src/project/commands/index.ts';
import type { Project } from '../../src/project/schema.ts';
import { transport } from '../client/transport.ts';
import { rememberProject } from './lastProject.ts';
import { OtherWindows } from './otherWindows.svelte.ts';
import { Results } from './results.svelte.ts';
import { Saving } from './saving.svelte.ts';

export type Station = 'layOut' | 'makeUp' | 'breathe';

/** A drag in progress: previews replace each other, one commit makes one history step. */
export interface Gesture {
  preview<C extends CommandName>(command: C, args: CommandArguments<C>): void;
  commit(): void;
  cancel(): void;
}

/** The one store: the open project, its results and its history. `run` and gestures are its only mutators. */
export class Studio {
  readonly client: Client = createClient(transport);
  readonly saving = new Saving(this.client);
  readonly results = new Results();
  readonly otherWindows = new OtherWindows(this);

  project = $state.raw<Project | null>(null);
  station = $state<Station>('layOut');
  /** part selected on the drawing and in the tables */
  selectedPart = $state<string | null>(null);
  /** assembly shown first in Make up */
  selectedAssembly = $state<string | null>(null);
  /** why the last edit was not taken; shown until the next one is */
  refusal = $state.raw<ContractError | null>(null);
  /** the whole calculation as pages, in place of a station */
  printing = $state(false);
  #dragging = false;

  /** Applies a command. @returns whether it was taken; if not, `refusal` says why */
  run<C extends CommandName>(command: C, args: CommandArguments<C>): boolean {
    if (!this.project) return false;
    const next = this.#apply(this.project, command, args);
    if (!next) return false;
    if (next !== this.project) this.#keep(commands[command].label(args), next);
    return true;
  }

  gesture(): Gesture {
    const before = this.project;
    let label = '';
    this.#dragging = true;
    return {
      preview: (command, args) => {
        const next = before && this.#apply(before, command, args);
        if (!next) return;
        label = commands[command].label(args);
        this.project = next;
        void this.results.update(next, 'draft');
      },
      commit: () => {
        this.#dragging = false;
        if (this.project && this.project !== before) this.#keep(label, this.project);
      },
      cancel: () => {
        this.#dragging = false;
        if (before) this.#show(before);
      },
    };
  }

  async undo(): Promise<void> {
    await this.#step('projects.undo');
  }
  async redo(): Promise<void> {
    await this.#step('projects.redo');
  }

  /** Takes a project that the host has opened as the one on screen. */
  take(opened: OpenedProject): void {
    const { document, ...head } = opened;
    const checked = checkProject(document);
    if (!checked.ok) {
      this.refusal = { code: checked.code, sentence: checked.faults[0]?.sentence ?? '', faults: checked.faults };
      return;
    }
    const another = head.id !== this.saving.head?.id;
    this.saving.begin(head);
    this.refusal = null;
    this.otherWindows.overtakenBy = null;
    if (another) {
      this.selectedPart = null;
      this.selectedAssembly = null;
      this.results.clear();
    }
    rememberProject(head.id);
    this.#show(checked.project);
  }

  /** Saves what is open, then takes the project that the host opens. @returns whether it was taken */
  async takeFrom(call: Promise<OpenedProject>): Promise<boolean> {
    if (!this.saving.refusal) await this.saving.flush();
    const opened = await this.asking(call);
    if (opened) this.take(opened);
    return opened !== null && this.refusal === null;
  }

  /** No project open: the window shows the list of projects. */
  close(): void {
    this.project = null;
    this.saving.end();
    this.results.clear();
    this.selectedPart = null;
    this.selectedAssembly = null;
  }

  /** Runs a host call and shows its refusal; resolves to null when refused. */
  async asking<T>(call: Promise<T>): Promise<T | null> {
    try {
      const value = await call;
      this.refusal = null;
      return value;
    } catch (fault) {
      this.refusal = fault instanceof Refusal ? fault.error : { code: 'internal', sentence: String(fault) };
      return null;
    }
  }

  #apply<C extends CommandName>(project: Project, command: C, args: CommandArguments<C>): Project | null {
    try {
      const next = commands[command].apply(project, args);
      if (next === project) return project;
      const checked = checkProject(next);
      if (checked.ok) {
        this.refusal = null;
        return next;
      }
      this.refusal = { code: checked.code, sentence: checked.faults[0]?.sentence ?? '', faults: checked.faults };
    } catch (fault) {
      this.refusal = { code: 'bad-document', sentence: fault instanceof Error ? fault.message : String(fault) };
    }
    return null;
  }

  #keep(label: string, project: Project): void {
    this.#show(project);
    this.saving.add(label, project);
  }

  #show(project: Project): void {
    this.project = project;
    void this.results.update(project, this.#dragging ? 'draft' : 'full');
  }

  async #step(method: 'projects.undo' | 'projects.redo'): Promise<void> {
    await this.saving.flush();
    const head = this.saving.head;
    if (!head || this.saving.refusal) return;
    const opened = await this.asking(this.client.call(method, { id: head.id, revision: head.revision }));
    if (!opened) return;
    this.take(opened);
  }
}

export const studio = new Studio();
