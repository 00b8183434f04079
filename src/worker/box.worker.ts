import type { BoxNews, BoxRequest } from './boxProtocol.ts';
import { createBoxRun } from './boxRun.ts';

/** The worker that solves ventilation boxes: slow work, told of as it goes, cancelled on demand. */

declare const self: DedicatedWorkerGlobalScope;

const run = createBoxRun({
  tell: (news: BoxNews) => self.postMessage(news),
  now: () => performance.now(),
  pause: () => new Promise((resolve) => setTimeout(resolve)),
});

self.onmessage = ({ data }: MessageEvent<BoxRequest>) => void run(data);
