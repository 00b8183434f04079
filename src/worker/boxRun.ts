import { COARSE_PLAN, boxField, boxSteps, ventBoxGeometry, ventBoxPlan } from '../engine/openings/index.ts';
import type { BoxPlan, VentBox } from '../engine/openings/index.ts';
import type { BoxGrid, BoxNews, BoxRequest } from './boxProtocol.ts';

/** Between two looks at the messages, ms: a cancel is heard after that, and a solution at most once a step. */
const WORK_FOR = 25;

/** As the command line solves them; both keep the pressure inside, to know what comes in through the boards. */
const planOf = (grid: BoxGrid, box: VentBox): BoxPlan =>
  grid === 'fine' ? ventBoxPlan(box) : { ...COARSE_PLAN, inside: true };

/** What the run needs of the world. */
export interface BoxRunPorts {
  readonly tell: (news: BoxNews) => void;
  /** milliseconds of a running clock */
  readonly now: () => number;
  /** lets messages in */
  readonly pause: () => Promise<void>;
}

/**
 * Answers the box worker's requests: solutions step by step, so that each band can be shown when it is done and the
 * rest be cancelled; pressure fields in one go.
 */
export const createBoxRun = ({ tell, now, pause }: BoxRunPorts): ((request: BoxRequest) => Promise<void>) => {
  /** solutions under way; one that is taken out is cancelled */
  const running = new Set<number>();

  const solve = async ({ sequence, box, grid }: Extract<BoxRequest, { kind: 'solve' }>): Promise<void> => {
    const steps = boxSteps(ventBoxGeometry(box), planOf(grid, box));
    running.add(sequence);
    let paused = now();
    let said = 0;
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done === true) {
        running.delete(sequence);
        tell({ sequence, kind: 'solved', result: step.value });
        return;
      }
      const { fraction, band } = step.value;
      if (band !== null || fraction - said > 0.02) {
        said = fraction;
        tell({ sequence, kind: 'progress', fraction, band });
      }
      if (now() - paused < WORK_FOR) continue;
      await pause();
      paused = now();
      if (!running.has(sequence)) {
        tell({ sequence, kind: 'cancelled' });
        return;
      }
    }
  };

  return async (request) => {
    const { sequence } = request;
    try {
      if (request.kind === 'cancel') running.delete(sequence);
      else if (request.kind === 'solve') await solve(request);
      else {
        const { box, cellSize, frequency, from } = request;
        tell({ sequence, kind: 'field', field: boxField(ventBoxGeometry(box), cellSize, frequency, from) });
      }
    } catch (fault) {
      const reason = fault instanceof Error ? fault.message : String(fault);
      tell({ sequence, kind: 'fault', sentence: `The box cannot be solved: ${reason}.` });
    }
  };
};
