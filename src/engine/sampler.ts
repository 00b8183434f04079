import { createMemory } from './quantities/index.ts';
import { createPredictor } from './transmission/index.ts';
import type { Prediction } from './transmission/index.ts';
import { createUncertainty } from './uncertainty/index.ts';
import type { Uncertainty } from './uncertainty/index.ts';

/** Full predictions that are kept; drafts of make-ups moved from their middle are not met again. */
const KEPT = 200;

/**
 * Uncertainty with a predictor of its own: the second corridor, for what takes seconds.
 * @returns uncertainty; the same question with the same start gives the same answer
 * @throws RangeError from the rooms, in the house's wording, for input out of range
 */
export const createSampler = (): Uncertainty => {
  const predictor = createPredictor();
  const kept = createMemory<Prediction>(KEPT);
  return createUncertainty((assembly, { width, height }, resolution) => {
    const size: readonly [number, number] = [width, height];
    if (resolution === 'draft') return predictor.predict(assembly, { resolution, size });
    return kept.recall(JSON.stringify([assembly.layers, size]), () =>
      predictor.predict(assembly, { resolution, size }),
    );
  });
};
