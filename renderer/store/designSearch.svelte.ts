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

/** What came of a search; of a fault there is only a sentence. */
export type DesignOutcome =
  | {
      readonly kind: 'found';
      /** the project that it was found for, or that it was put into */
      readonly of: Project;
      readonly found: DesignFound;
      readonly putIn: boolean;
    }
  | { readonly kind: 'fault'; readonly sentence: string };

/** Which vent of which kept project is looked for, and how many boxes have been solved by now. */
export interface DesignWork {
  readonly home: string;
  readonly opening: string;
  readonly boxes: number;
  /** boxes that may have to be solved; null until it is known */
  readonly of: number | null;
}

/** Looks for the smallest vent of one opening at a time, off the window's thread; what was found stays by opening. */
export class DesignSearch {
  /** null at rest */
  working = $state.raw<DesignWork | null>(null);
  #outcomes = $state.raw<ReadonlyMap<string, DesignOutcome>>(new Map());
  readonly #start: () => DesignPort;
  #worker: DesignPort | null = null;

  constructor(start: () => DesignPort = startWorker) {
    this.#start = start;
  }

  /** @param home the kept project's id */
  outcome(home: string, opening: string): DesignOutcome | null {
    return this.#outcomes.get(`${home} ${opening}`) ?? null;
  }

  /** Begins a search; while another one goes on it does nothing. */
  look(home: string, ask: DesignAsk): void {
    if (this.#worker) return;
    const { project, opening } = ask;
    this.#keep(home, opening, null);
    this.working = { home, opening, boxes: 0, of: null };
    const worker = this.#start();
    this.#worker = worker;
    worker.onmessage = ({ data }) => {
      if (worker !== this.#worker) return;
      if (data.kind === 'progress') {
        this.working = { home, opening, boxes: data.boxes, of: data.of };
        return;
      }
      this.#keep(
        home,
        opening,
        data.kind === 'found' ? { kind: 'found', of: project, found: data.found, putIn: false } : data,
      );
      this.stop();
    };
    worker.onerror = () => {
      if (worker !== this.#worker) return;
      this.#keep(home, opening, { kind: 'fault', sentence: BROKEN });
      this.stop();
    };
    worker.postMessage(ask);
  }

  /** What was found is in the project now. @param project with it */
  hasPutIn(home: string, opening: string, project: Project): void {
    const outcome = this.outcome(home, opening);
    if (outcome?.kind === 'found') this.#keep(home, opening, { ...outcome, of: project, putIn: true });
  }

  /** Ends the search; what was found before is not shown again. */
  stop(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.working = null;
  }

  #keep(home: string, opening: string, outcome: DesignOutcome | null): void {
    const others = [...this.#outcomes].filter(([key]) => key !== `${home} ${opening}`);
    this.#outcomes = new Map(outcome ? [...others, [`${home} ${opening}`, outcome]] : others);
  }
}

export const designSearch = new DesignSearch();
