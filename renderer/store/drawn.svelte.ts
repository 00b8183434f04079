import type { SampledResult, SampledShell } from '../../src/engine/uncertainty/index.ts';
import type { Project } from '../../src/project/schema.ts';
import { createLongClient, type LongClient } from '../../src/worker/longClient.ts';

/** Builds drawn by themselves once nothing changes any more, and on demand. */
export const AUTOMATIC = 2000;
export const ON_DEMAND = 10_000;

/** Waits this long after the last edit, ms. */
const REST = 700;

/** A remainder is told from this share of the work on. */
const TELLING = 0.05;

const startWorker = (): LongClient =>
  createLongClient(new Worker(new URL('../../src/worker/uncertainty.worker.ts', import.meta.url), { type: 'module' }));

interface Drawing {
  readonly of: Project;
  readonly samples: number;
  readonly shell: SampledShell | null;
  readonly assemblies: Readonly<Record<string, SampledResult>>;
}

/** Builds drawn from the project on screen; what was drawn before an edit is not shown any more. */
export class Drawn {
  #drawing = $state.raw<Drawing | null>(null);
  #project = $state.raw<Project | null>(null);
  /** 0 to 1 while builds are being drawn; null at rest */
  progress = $state<number | null>(null);
  /** seconds that are left, as far as can be told; null before */
  remaining = $state<number | null>(null);
  /** builds being drawn */
  asked = $state(AUTOMATIC);
  /** why nothing could be drawn */
  fault = $state<string | null>(null);
  /** true where the user has stopped it for this state of the project */
  stopped = $state(false);
  #watched: readonly string[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;
  #client: LongClient | null = null;

  get #fresh(): Drawing | null {
    return this.#drawing && this.#drawing.of === this.#project ? this.#drawing : null;
  }
  /** builds that the figures on screen are drawn from; 0 where the quick estimate stands */
  get samples(): number {
    return this.#fresh?.samples ?? 0;
  }
  get shell(): SampledShell | null {
    return this.#fresh?.shell ?? null;
  }
  assembly(id: string | null): SampledResult | null {
    return id === null ? null : (this.#fresh?.assemblies[id] ?? null);
  }

  /** Tells what is on screen; draws it when it has been left alone for a while. */
  follow(project: Project | null, watched: readonly string[]): void {
    const edited = project !== this.#project;
    this.#watched = watched;
    if (!edited && this.#missing().length === 0) return;
    this.#project = project;
    if (edited) this.#stop();
    if (edited) this.stopped = false;
    clearTimeout(this.#timer);
    if (project && !this.stopped)
      this.#timer = setTimeout(() => void this.run(Math.max(AUTOMATIC, this.samples)), edited ? REST : 0);
  }

  /** Make-ups on screen that have not been drawn yet. */
  #missing(): readonly string[] {
    const project = this.#project;
    return project ? this.#watched.filter((id) => id in project.assemblies && !this.#fresh?.assemblies[id]) : [];
  }

  /** Draws builds of the project on screen. */
  async run(samples: number): Promise<void> {
    const project = this.#project;
    if (!project) return;
    clearTimeout(this.#timer);
    const began = performance.now();
    this.asked = samples;
    this.progress = 0;
    this.remaining = null;
    this.fault = null;
    this.stopped = false;
    this.#client ??= startWorker();
    const running = this.#client;
    try {
      // what has been drawn as finely already stays
      const known = this.#fresh?.samples === samples ? this.#fresh : null;
      const predict = known ? this.#missing() : this.#watched.filter((id) => id in project.assemblies);
      const answer = await running.run({ project, samples, start: 1, whole: !known, predict }, (done) => {
        this.progress = done;
        if (done > TELLING) this.remaining = ((performance.now() - began) / 1000) * (1 / done - 1);
      });
      if (!answer) return;
      this.#drawing = {
        of: project,
        samples,
        shell: known?.shell ?? answer.shell,
        assemblies: { ...known?.assemblies, ...answer.assemblies },
      };
    } catch (fault) {
      this.fault = fault instanceof Error ? fault.message : String(fault);
    }
    this.progress = null;
  }

  /** Stops drawing until the next edit, or until it is asked for again. */
  cancel(): void {
    this.#stop();
    this.stopped = true;
  }

  #stop(): void {
    clearTimeout(this.#timer);
    this.#client?.cancel();
    this.progress = null;
  }
}

export const drawn = new Drawn();
