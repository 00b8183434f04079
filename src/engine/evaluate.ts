import type { Assembly } from './assembly/index.ts';
import { assemblyNotes, planOf, shellNotes } from './plan/index.ts';
import type { PlanResult } from './plan/index.ts';
import { solveBoxCoarse, solveBoxWhole, waveBoxSound } from './openings/index.ts';
import type { BoxSound, VentBox } from './openings/index.ts';
import type { Note } from './quantities/index.ts';
import { evaluateShell, partTransmission } from './shell/index.ts';
import type { Build, Part, PartSize, PartTransmission, ShellResult } from './shell/index.ts';
import { createPredictor } from './transmission/index.ts';
import type { Prediction, Resolution } from './transmission/index.ts';

/** The corridor: calls the rooms in order and remembers what it computed for parts that have not changed. */
export interface Evaluator {
  /** R of an assembly as a laboratory would report it (4 × 2.5 m; glazing 1.48 × 1.23 m); notes at full resolution. */
  predict(assembly: Assembly, resolution: Resolution): Prediction;
  /** The whole shell, each part at its own size; notes at full resolution. */
  shell(build: Build, resolution: Resolution): ShellResult;
  /** Every single swap and every named option. */
  plan(build: Build, resolution: Resolution): PlanResult;
}

/** Results kept, of each kind; a session of editing stays within it. */
const KEPT = 800;

/** Remembers results by what they were computed from; the longest unused is forgotten first. */
const createMemory = <T>() => {
  const kept = new Map<string, T>();
  return (key: string, compute: () => T): T => {
    const known = kept.get(key);
    const result = known ?? compute();
    kept.delete(key);
    kept.set(key, result);
    const oldest = kept.keys().next();
    if (kept.size > KEPT && !oldest.done) kept.delete(oldest.value);
    return result;
  };
};

/**
 * An evaluator with its own memory: what depends on unchanged content (layers, size, resolution) is not computed again.
 * @returns evaluator; the same question gives the same answer
 * @throws RangeError from the rooms, in the house's wording, for input out of range
 */
export const createEvaluator = (): Evaluator => {
  const predictor = createPredictor();
  const predictions = createMemory<Prediction>();
  const transmissions = createMemory<PartTransmission>();
  const notes = createMemory<readonly Note[]>();
  const boxes = createMemory<BoxSound>();

  const predictAt = (assembly: Assembly, size: PartSize | null, resolution: Resolution): Prediction =>
    predictions(JSON.stringify([resolution, size, assembly.layers]), () =>
      predictor.predict(assembly, { resolution, ...(size && { size: [size.width, size.height] as const }) }),
    );

  const boxAt = (box: VentBox, resolution: Resolution): BoxSound =>
    boxes(JSON.stringify([resolution, box]), () =>
      waveBoxSound(box, resolution === 'draft' ? solveBoxCoarse : solveBoxWhole),
    );

  const transmitAt =
    (resolution: Resolution) =>
    (part: Part): PartTransmission =>
      transmissions(JSON.stringify([resolution, part.element, part.width, part.height, part.area]), () =>
        partTransmission(
          part,
          (assembly, size) => predictAt(assembly, size, resolution),
          (box) => boxAt(box, resolution),
        ),
      );

  const notesOn = (assembly: Assembly): readonly Note[] =>
    notes(JSON.stringify(assembly.layers), () => assemblyNotes(assembly, (other) => predictAt(other, null, 'full')));

  // advice predicts alternatives, so it waits until nothing is being dragged
  return {
    predict: (assembly, resolution) => {
      const prediction = predictAt(assembly, null, resolution);
      if (resolution === 'draft') return prediction;
      return {
        ...prediction,
        // worked out when first read: a caller that wants the curve alone does not pay for advice
        get notes() {
          return notesOn(assembly);
        },
      };
    },
    shell: (build, resolution) => {
      const shell = evaluateShell(build, transmitAt(resolution));
      return resolution === 'full' ? { ...shell, notes: shellNotes(build, shell) } : shell;
    },
    plan: (build, resolution) => planOf(build, transmitAt(resolution)),
  };
};
