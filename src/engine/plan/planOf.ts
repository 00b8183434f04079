import type { Build } from '../shell/index.ts';
import { ladder } from './ladder.ts';
import type { PlanResult } from './ladderResult.ts';
import { nextStep } from './nextStep.ts';
import { optionResult } from './options.ts';
import type { Transmit } from './swap.ts';
import { standingOf } from './swap.ts';

/**
 * What to change: every single swap ranked, the one to make first, and every named option beside the build as it is.
 * @param build parts with their candidates, options, source
 * @param transmit what one part lets through
 * @source EN 12354-3:2000, clause 4
 */
export const planOf = (build: Build, transmit: Transmit): PlanResult => {
  const standing = standingOf(build, transmit);
  const rungs = ladder(standing, transmit);
  return {
    rungs,
    next: nextStep(rungs),
    options: build.options.map((option) => optionResult(standing, option, transmit)),
  };
};
