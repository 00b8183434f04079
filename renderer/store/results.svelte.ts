import { tick } from 'svelte';
import type { PlanResult } from '../../src/engine/plan/index.ts';
import type { Working } from '../../src/engine/quantities/index.ts';
import type { ShellResult } from '../../src/engine/shell/index.ts';
import type { Prediction, Resolution } from '../../src/engine/transmission/index.ts';
import type { Project } from '../../src/project/schema.ts';
import { withTriedVent } from '../../src/project/triedVent.ts';
import type { BreatheAnswer, SolvedBox } from '../../src/worker/breathe/breatheAnswer.ts';
import { createWorkerClient, type WorkerClient } from '../../src/worker/client.ts';
import type { Explained, Guides, SecondOpinion } from '../../src/worker/protocol.ts';
import { Lateness } from './lateness.svelte.ts';

const startWorker = (): WorkerClient =>
  createWorkerClient(new Worker(new URL('../../src/worker/evaluation.worker.ts', import.meta.url), { type: 'module' }));

/** Figures of Breathe: of the vent that is tried there. */
const OF_AIR: ReadonlySet<Explained['kind']> = new Set(['air', 'vent', 'vent-band', 'vent-piece']);

/** What the engine says of the project on screen; derived, never stored. The last good result stays while stale. */
export class Results {
  shell = $state.raw<ShellResult | null>(null);
  predictions = $state.raw<Readonly<Record<string, Prediction>>>({});
  plan = $state.raw<PlanResult | null>(null);
  resolution = $state<Resolution>('full');
  /** true from an edit until its results have arrived */
  stale = $state(false);
  answeredAt = $state.raw<Date | null>(null);
  /** why there is no fresh result; null while all is well */
  fault = $state<string | null>(null);
  /** vent that Breathe shows as if it were built in; null where what is built in is shown */
  tried = $state<string | null>(null);
  /** assemblies whose laboratory curves a view shows */
  watched = $state.raw<readonly string[]>([]);
  #project: Project | null = null;
  #worker: WorkerClient | null = null;
  readonly #shellLateness = new Lateness();
  readonly #planLateness = new Lateness();

  /** stale for longer than an eye blink, or without a fresh result at all: shown greyed, with the time of `answeredAt` */
  get late(): boolean {
    return this.#shellLateness.late || this.fault !== null;
  }
  /** the same for the plan, which comes after the shell */
  get planLate(): boolean {
    return this.late || this.#planLateness.late;
  }

  async update(project: Project, resolution: Resolution): Promise<void> {
    this.#project = project;
    this.#wait();
    const predict = this.watched.filter((id) => id in project.assemblies);
    try {
      const answer = await this.#ask().ask('evaluate', { project, resolution, predict });
      if (!answer) return;
      this.shell = answer.shell;
      this.predictions = answer.predictions;
      this.resolution = resolution;
      this.fault = null;
      this.answeredAt = new Date();
      if (project !== this.#project) return;
      this.#arrived();
      if (resolution !== 'full') return;
      // what the station on screen asks for besides goes before the plan
      await tick();
      if (project === this.#project) await this.#updatePlan(project);
    } catch (fault) {
      this.fault = fault instanceof Error ? fault.message : String(fault);
    }
  }

  /** Forgets the figures of the project that was open before. */
  clear(): void {
    this.shell = null;
    this.predictions = {};
    this.plan = null;
    this.fault = null;
    this.answeredAt = null;
    this.tried = null;
  }

  /** Names the assemblies a view shows; their curves come with the next result. */
  watch(ids: readonly string[]): void {
    if (ids.length === this.watched.length && ids.every((id, i) => id === this.watched[i])) return;
    this.watched = ids;
    if (this.#project) void this.update(this.#project, 'full');
  }

  async explain(what: Explained): Promise<Working | null> {
    if (!this.#project) return null;
    const project = OF_AIR.has(what.kind) ? withTriedVent(this.#project, this.tried) : this.#project;
    return this.#ask().ask('explain', { project, what });
  }

  async breathe(resolution: Resolution): Promise<BreatheAnswer | null> {
    if (!this.#project) return null;
    return this.#ask().ask('breathe', { project: withTriedVent(this.#project, this.tried), resolution });
  }

  /** Takes fine box solutions in place of the coarse ones, and works everything out anew. */
  async learn(boxes: readonly SolvedBox[]): Promise<void> {
    await this.#ask().ask('learn', { boxes });
    if (this.#project) await this.update(this.#project, 'full');
  }

  async secondMethod(assembly: string): Promise<SecondOpinion | null> {
    return this.#project && this.#ask().ask('secondMethod', { project: this.#project, assembly });
  }

  async guides(assembly: string): Promise<Guides | null> {
    return this.#project && this.#ask().ask('guides', { project: this.#project, assembly });
  }

  async #updatePlan(project: Project): Promise<void> {
    const plan = await this.#ask().ask('plan', { project });
    if (!plan || project !== this.#project) return;
    this.plan = plan;
    this.#planLateness.arrived();
  }

  #ask(): WorkerClient {
    this.#worker ??= startWorker();
    return this.#worker;
  }

  #wait(): void {
    this.stale = true;
    this.#shellLateness.wait();
    this.#planLateness.wait();
  }

  #arrived(): void {
    this.stale = false;
    this.#shellLateness.arrived();
  }
}
