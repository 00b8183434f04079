import type { Assembly } from './assembly/index.ts';
import { breathe } from './breathe.ts';
import type { BreatheQuestion, BreatheResult } from './breatheResult.ts';
import { assemblyNotes, planOf, shellNotes } from './plan/index.ts';
import type { PlanResult } from './plan/index.ts';
import { solveBoxCoarse, solveBoxWhole, ventTransmission, waveBoxSound } from './openings/index.ts';
import type { BoxResult, BoxSolver, BoxSound, VentBox, VentPath, VentPorts, VentSound } from './openings/index.ts';
import { createMemory } from './quantities/index.ts';
import type { Note } from './quantities/index.ts';
import { evaluateShell, partTransmission } from './shell/index.ts';
import type { Build, Part, PartSize, PartTransmission, ShellResult } from './shell/index.ts';
import { createPredictor } from './transmission/index.ts';
import type { Prediction, Resolution } from './transmission/index.ts';

/** The corridor: calls the rooms in order and remembers what it computed for parts that have not changed. */
export interface Evaluator {
  /** R of an assembly as a laboratory would report it (4 × 2.5 m; glazing 1.48 × 1.23 m; a bare board 2.4 × 1.2 m); notes at full resolution. */
  predict(assembly: Assembly, resolution: Resolution): Prediction;
  /** The whole shell, each part at its own size; notes at full resolution. */
  shell(build: Build, resolution: Resolution): ShellResult;
  /** Vents, fresh air, CO2, heat and noise of a room. */
  breathe(build: Build, question: BreatheQuestion, resolution: Resolution): BreatheResult;
  /** Every single swap and every named option. */
  plan(build: Build, resolution: Resolution): PlanResult;
  /** Sound through one vent, its fans standing. */
  vent(path: VentPath, resolution: Resolution): VentSound;
  /** R of a casing at its size, as vents ask for it. */
  reductionAt(resolution: Resolution): VentPorts['reduction'];
}

/** Looks up the fine solution of a box that someone else works out; null: the coarse grid serves until there is one. */
export type KnownBox = (box: VentBox) => BoxResult | null;

/** Results kept, of each kind; a session of editing stays within it. */
const KEPT = 800;

/** Grid of the solution that stands for a box, and how to come by it. */
interface BoxWay {
  readonly grid: 'coarse' | 'fine';
  readonly solve: BoxSolver;
}

/**
 * An evaluator with its own memory: what depends on unchanged content (layers, size, resolution) is not computed again.
 * @param knownBox fine solutions found elsewhere; without it boxes are solved here, finely but for drafts
 * @returns evaluator; the same question gives the same answer
 * @throws RangeError from the rooms, in the house's wording, for input out of range
 */
export const createEvaluator = (knownBox?: KnownBox): Evaluator => {
  const predictor = createPredictor();
  const predictions = createMemory<Prediction>(KEPT);
  const transmissions = createMemory<PartTransmission>(KEPT);
  const notes = createMemory<readonly Note[]>(KEPT);
  const boxes = createMemory<BoxSound>(KEPT);
  const vents = createMemory<VentSound>(KEPT);

  const predictAt = (assembly: Assembly, size: PartSize | null, resolution: Resolution): Prediction =>
    predictions.recall(JSON.stringify([resolution, size, assembly.layers]), () =>
      predictor.predict(assembly, { resolution, ...(size && { size: [size.width, size.height] as const }) }),
    );

  const reductionAt =
    (resolution: Resolution): VentPorts['reduction'] =>
    (assembly, size) =>
      predictAt(assembly, size, resolution).R;

  const wayOf = (box: VentBox, resolution: Resolution): BoxWay => {
    const known = knownBox?.(box) ?? null;
    if (known) return { grid: 'fine', solve: () => known };
    const fine = resolution === 'full' && knownBox === undefined;
    return fine ? { grid: 'fine', solve: solveBoxWhole } : { grid: 'coarse', solve: solveBoxCoarse };
  };

  const boxAt = (box: VentBox, resolution: Resolution): BoxSound => {
    const { grid, solve } = wayOf(box, resolution);
    return boxes.recall(JSON.stringify([grid, box]), () => waveBoxSound(box, solve));
  };

  const ventAt = (path: VentPath, resolution: Resolution): VentSound =>
    vents.recall(JSON.stringify([resolution, path, gridsOf(path, resolution)]), () =>
      ventTransmission(path, {
        boxSound: (box) => boxAt(box, resolution),
        reduction: reductionAt(resolution),
      }),
    );

  const gridsOf = ({ elements }: VentPath, resolution: Resolution): readonly string[] =>
    elements.flatMap((element) => (element.kind === 'box' ? [wayOf(element.box, resolution).grid] : []));

  const transmitAt =
    (resolution: Resolution) =>
    (part: Part): PartTransmission => {
      const grids = part.element.kind === 'path' ? gridsOf(part.element.path, resolution) : [];
      return transmissions.recall(
        JSON.stringify([resolution, part.element, part.width, part.height, part.area, grids]),
        () =>
          partTransmission(
            part,
            (assembly, size) => predictAt(assembly, size, resolution),
            (box) => boxAt(box, resolution),
          ),
      );
    };

  const notesOn = (assembly: Assembly): readonly Note[] =>
    notes.recall(JSON.stringify(assembly.layers), () =>
      assemblyNotes(assembly, (other) => predictAt(other, null, 'full')),
    );

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
    breathe: (build, question, resolution) =>
      breathe(question, evaluateShell(build, transmitAt(resolution)).parts, {
        boxSound: (box) => boxAt(box, resolution),
        reduction: reductionAt(resolution),
      }),
    plan: (build, resolution) => planOf(build, transmitAt(resolution)),
    vent: ventAt,
    reductionAt,
  };
};
