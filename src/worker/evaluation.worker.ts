import { createAnswerTask } from './answerTask.ts';
import type { WorkerRequest, WorkerResponse } from './protocol.ts';

/** The worker's end of the protocol: one answer for each request, a fault as a sentence. */

declare const self: DedicatedWorkerGlobalScope;

const answerTask = createAnswerTask(() => performance.now());

const respond = (response: WorkerResponse): void => {
  self.postMessage(response);
};

self.onmessage = ({ data }: MessageEvent<WorkerRequest>) => {
  const { sequence } = data;
  try {
    respond({ sequence, ok: true, answer: answerTask(data) });
  } catch (fault) {
    const reason = fault instanceof Error ? fault.message : String(fault);
    respond({ sequence, ok: false, sentence: `This cannot be worked out: ${reason}.` });
  }
};
