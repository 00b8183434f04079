import { createLongWork } from './uncertainty/createLongWork.ts';
import type { LongRequest } from './protocol.ts';

/** A worker of its own for what takes seconds, so that an edit's figures never wait for it. */

declare const self: DedicatedWorkerGlobalScope;

const work = createLongWork({
  respond: (response) => self.postMessage(response),
  later: (slice) => setTimeout(slice, 0),
  now: () => performance.now(),
});

self.onmessage = ({ data }: MessageEvent<LongRequest>) => work(data);
