import type { DesignAsk, DesignNews } from './breathe/designAnswer.ts';
import { designTask } from './breathe/designTask.ts';

/** Looks for one vent in one go, so it is ended where the answer is no longer wanted. */

declare const self: DedicatedWorkerGlobalScope;

const tell = (news: DesignNews): void => self.postMessage(news);

self.onmessage = ({ data }: MessageEvent<DesignAsk>) => {
  try {
    tell({ kind: 'found', found: designTask(data, (boxes, of) => tell({ kind: 'progress', boxes, of })) });
  } catch (fault) {
    const reason = fault instanceof Error ? fault.message : String(fault);
    tell({ kind: 'fault', sentence: `No box can be looked for: ${reason}.` });
  }
};
