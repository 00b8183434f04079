import type { Project } from '../../src/project/schema.ts';
import type { DesignAsk, DesignFound, DesignNews } from '../../src/worker/breathe/designAnswer.ts';

/** As much of a Worker as the search needs. */
export interface DesignPort {
  postMessage(message: DesignAsk): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<DesignNews>) => unknown) | null;
  onerror: ((event: ErrorEvent) => unknown) | null;
}

const startWorker = (): DesignPort =>
  new Worker(new URL('../../src/worker/design.worker.ts', import.meta.url), { type: 'module' });

const BROKEN = 'No box could be looked for because of a fault of ours. The other figures are not touched by it.';

interface Answer {
  readonly of: Project;
  readonly opening: string;
  readonly found: DesignFound;
}

/** Looks for the smallest box of one vent at a time, off the window's thread. */
export class DesignSearch {
  /** the opening it is looked for, and how many boxes have been solved by now; null at rest */
  working = $state.raw<{ readonly opening: string; readonly boxes: number } | null>(null);
  answer = $state.raw<Answer | null>(null);
  fault = $state<string | null>(null);
  readonly #start: () => DesignPort;
  #worker: DesignPort | null = null;

  constructor(start: () => DesignPort = startWorker) {
    this.#start = start;
  }

  look(project: Project, opening: string, mostCost: number): void {
    this.stop();
    [this.answer, this.fault] = [null, null];
    this.working = { opening, boxes: 0 };
    const worker = this.#start();
    this.#worker = worker;
    worker.onmessage = ({ data }) => {
      if (worker !== this.#worker) return;
      if (data.kind === 'progress') {
        this.working = { opening, boxes: data.boxes };
        return;
      }
      if (data.kind === 'found') this.answer = { of: project, opening, found: data.found };
      else this.fault = data.sentence;
      this.stop();
    };
    worker.onerror = () => {
      if (worker !== this.#worker) return;
      this.fault = BROKEN;
      this.stop();
    };
    worker.postMessage({ project, opening, mostCost });
  }

  /** Ends the search; what was found before is not shown again. */
  stop(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.working = null;
  }
}

export const designSearch = new DesignSearch();
