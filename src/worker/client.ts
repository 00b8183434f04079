import type { TaskName, Tasks, WorkerRequest, WorkerResponse } from './protocol.ts';

/** As much of a Worker as the client needs. */
export interface WorkerPort {
  postMessage(message: unknown): void;
  onmessage: ((event: MessageEvent<WorkerResponse>) => unknown) | null;
  onerror: ((event: ErrorEvent) => unknown) | null;
}

export interface WorkerClient {
  /** The answer; null where a later ask of the same task has taken this one's place. @throws Error with a sentence */
  ask<T extends TaskName>(task: T, ask: Tasks[T]['ask']): Promise<Tasks[T]['answer'] | null>;
}

interface Waiting {
  readonly request: WorkerRequest;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (fault: Error) => void;
}

/** Tasks of which only the latest ask matters: an older one still in the queue is dropped. */
const LATEST_WINS: ReadonlySet<TaskName> = new Set<TaskName>(['evaluate', 'plan', 'breathe']);

const BROKEN =
  'The calculation stopped because of a fault of ours. Change anything to try again; nothing saved is lost.';

/**
 * Asks the worker one thing at a time, so that a newer edit overtakes older ones instead of waiting behind them.
 * An evaluation goes before everything else in the queue; one already in work is still answered, so that a long drag
 * keeps being drawn.
 */
export const createWorkerClient = (worker: WorkerPort): WorkerClient => {
  const queue: Waiting[] = [];
  const state: { sequence: number; running: Waiting | null } = { sequence: 0, running: null };

  const next = (): void => {
    if (state.running) return;
    const urgent = queue.findIndex(({ request }) => request.task === 'evaluate');
    const [waiting] = queue.splice(Math.max(0, urgent), 1);
    if (!waiting) return;
    state.running = waiting;
    try {
      worker.postMessage(waiting.request);
    } catch (fault) {
      state.running = null;
      waiting.reject(fault instanceof Error ? fault : new Error(String(fault)));
      next();
    }
  };

  worker.onmessage = ({ data }) => {
    const waiting = state.running;
    if (waiting?.request.sequence !== data.sequence) return;
    state.running = null;
    if (data.ok) waiting.resolve(data.answer);
    else waiting.reject(new Error(data.sentence));
    next();
  };

  worker.onerror = () => {
    const waiting = state.running;
    state.running = null;
    waiting?.reject(new Error(BROKEN));
    next();
  };

  return {
    ask: <T extends TaskName>(task: T, ask: Tasks[T]['ask']) =>
      new Promise<Tasks[T]['answer'] | null>((resolve, reject) => {
        const request: WorkerRequest<T> = { sequence: (state.sequence += 1), task, ask };
        if (LATEST_WINS.has(task)) {
          const overtaken = queue.findIndex((waiting) => waiting.request.task === task);
          if (overtaken >= 0) queue.splice(overtaken, 1).forEach((waiting) => waiting.resolve(null));
        }
        queue.push({ request, resolve: (answer) => resolve(answer as Tasks[T]['answer'] | null), reject });
        next();
      }),
  };
};
