import { createSampler } from '../../engine/sampler.ts';
import type { LongRequest, LongResponse } from '../protocol.ts';
import { samplingSteps } from './samplingSteps.ts';

/** What the work needs of the place it runs in. */
export interface LongWorkPlace {
  readonly respond: (response: LongResponse) => void;
  /** runs the next slice after messages that have come meanwhile */
  readonly later: (slice: () => void) => void;
  /** milliseconds of a running clock */
  readonly now: () => number;
}

/** Works this long before it looks for messages, ms. */
const SLICE = 40;

/**
 * Works on one long task in slices, so that a newer ask or a cancel is heard between them. A newer ask takes the place of the
 * one in work; what was fitted for it is kept.
 */
export const createLongWork = ({ respond, later, now }: LongWorkPlace): ((request: LongRequest) => void) => {
  const uncertainty = createSampler();
  const state = { sequence: 0 };

  const begin = (request: Extract<LongRequest, { task: 'uncertainty' }>): void => {
    const { sequence, ask } = request;
    state.sequence = sequence;
    const steps = samplingSteps(uncertainty, ask);
    const slice = (): void => {
      if (state.sequence !== sequence) return;
      const until = now() + SLICE;
      try {
        for (;;) {
          const step = steps.next();
          if (step.done) return respond({ sequence, kind: 'answer', answer: step.value });
          if (now() < until) continue;
          respond({ sequence, kind: 'progress', done: step.value });
          return later(slice);
        }
      } catch (fault) {
        const reason = fault instanceof Error ? fault.message : String(fault);
        respond({ sequence, kind: 'fault', sentence: `The uncertainty cannot be worked out: ${reason}.` });
      }
    };
    slice();
  };

  return (request) => {
    if (request.task === 'cancel') state.sequence = request.sequence;
    else begin(request);
  };
};
