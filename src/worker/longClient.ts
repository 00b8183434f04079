import type { LongRequest, LongResponse, LongTasks } from './protocol.ts';

/** As much of a Worker as the client needs. */
export interface LongWorkerPort {
  postMessage(message: unknown): void;
  onmessage: ((event: MessageEvent<LongResponse>) => unknown) | null;
  onerror: ((event: ErrorEvent) => unknown) | null;
}

export interface LongClient {
  /** The answer; null where it was cancelled or a newer ask took its place. @throws Error with a sentence */
  run(
    ask: LongTasks['uncertainty']['ask'],
    onprogress: (done: number) => void,
  ): Promise<LongTasks['uncertainty']['answer'] | null>;
  cancel(): void;
}

interface Waiting {
  readonly sequence: number;
  readonly resolve: (answer: LongTasks['uncertainty']['answer'] | null) => void;
  readonly reject: (fault: Error) => void;
  readonly onprogress: (done: number) => void;
}

const BROKEN =
  'The uncertainty could not be worked out because of a fault of ours. The other figures are not touched by it.';

/** Asks for one long piece of work at a time; a newer ask takes the place of the one in work. */
export const createLongClient = (worker: LongWorkerPort): LongClient => {
  const state: { sequence: number; running: Waiting | null } = { sequence: 0, running: null };
  const take = (): Waiting | null => {
    const { running } = state;
    state.running = null;
    return running;
  };
  const post = (request: LongRequest): void => worker.postMessage(request);

  worker.onmessage = ({ data }) => {
    if (state.running?.sequence !== data.sequence) return;
    if (data.kind === 'progress') state.running.onprogress(data.done);
    else if (data.kind === 'answer') take()?.resolve(data.answer);
    else take()?.reject(new Error(data.sentence));
  };
  worker.onerror = () => take()?.reject(new Error(BROKEN));

  return {
    run: (ask, onprogress) =>
      new Promise((resolve, reject) => {
        take()?.resolve(null);
        const sequence = (state.sequence += 1);
        state.running = { sequence, resolve, reject, onprogress };
        post({ sequence, task: 'uncertainty', ask });
      }),
    cancel: () => {
      const running = take();
      if (!running) return;
      post({ sequence: (state.sequence += 1), task: 'cancel' });
      running.resolve(null);
    },
  };
};
