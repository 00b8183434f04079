import type { NextStep } from '../../src/engine/plan/index.ts';

/** Why the next best step is the one shown, in words for the strip. */
export const NEXT_STEP_REASONS: Readonly<Record<NextStep['reason'], string>> = {
  money: 'the most for its money',
  'no-prices': 'the largest gain; no price is given',
  'all-small': 'the largest gain; no single change brings 1 dB',
};
