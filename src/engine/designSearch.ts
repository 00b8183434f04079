import { shapeOf, type DesignCandidate } from './designGrid.ts';
import { SETTLED_FIRST, SILENT_BOX, type DraftBoxes } from './designDraft.ts';
import { leakOf, type BandWeights } from './designLeak.ts';
import { ventTransmission } from './openings/index.ts';
import type { BoxSound, VentBox, VentElement, VentPath, VentPorts } from './openings/index.ts';
import { THIRD_OCTAVES, createMemory } from './quantities/index.ts';

/**
 * How well the leak of a candidate is known, each a closer bound from below: 0 not at all, 1 what passes beside any box,
 * 2 up to 315 Hz by the air alone, 3 up to 315 Hz, 4 the coarse solution itself.
 */
export const COARSE_STEP = 4;

/** A candidate that carries the air, and the least that it can leak as far as is known. */
export interface Trial {
  readonly candidate: DesignCandidate;
  readonly path: VentPath;
  /** Pa and m/s at the wished flow */
  readonly loss: number;
  readonly speed: number;
  /** 0 to COARSE_STEP */
  step: number;
  /** m², as leakOf */
  leastLeak: number;
}

/** Brings trials closer to what they leak. */
export interface Refiner {
  readonly refine: (trial: Trial) => void;
  /** what would be left if its boxes let nothing through, m² */
  readonly besideBox: (trial: Trial) => number;
}

/** Shapes kept in mind, more than a grid has. */
const KEPT = 10_000;
/** Walls so heavy that nothing passes them, kg/m². */
const IMPASSABLE = 1e12;

const silenced = (element: VentElement): VentElement => {
  const wall = { assembly: null, surfaceMass: IMPASSABLE };
  if (element.kind === 'box') return { ...element, casing: wall };
  return element.kind === 'duct' ? { ...element, wall } : element;
};

const LOW: readonly boolean[] = THIRD_OCTAVES.map((band) => band <= SETTLED_FIRST);

/**
 * Brings trials closer to what they leak, step by step. Open areas add up and none is negative, so that a way alone,
 * the air alone, or some bands alone never leak more than the whole: each step is a bound from below on the last.
 * @param drafts solves boxes coarsely
 * @param reduction R of the boards
 * @param weights of the bands
 */
export const createRefiner = (drafts: DraftBoxes, reduction: VentPorts['reduction'], weights: BandWeights): Refiner => {
  const besides = createMemory<readonly number[]>(KEPT);
  const airs = createMemory<number>(KEPT);
  const openOf = (path: VentPath, boxSound: VentPorts['boxSound']): readonly number[] =>
    ventTransmission(path, { boxSound, reduction }).openArea;
  const quiet = ({ path }: Trial): VentPath => ({ ...path, elements: path.elements.map(silenced) });
  const drafted =
    (upTo: 1 | 2) =>
    (box: VentBox): BoxSound =>
      drafts.sound(box, upTo);
  const beside = (trial: Trial): readonly number[] => {
    const { diameter, linedDuct, boxes } = trial.candidate;
    return besides.recall(`${diameter} ${linedDuct} ${boxes}`, () => openOf(quiet(trial), () => SILENT_BOX));
  };
  /** Settled bands as solved, the others as if the box let nothing through. */
  const bass = (trial: Trial, path: VentPath): number => {
    const rest = beside(trial);
    const open = openOf(path, drafted(1));
    return leakOf(
      open.map((passed, b) => (LOW[b] === true ? passed : (rest[b] ?? 0))),
      weights,
    );
  };
  const leakAt = (trial: Trial, step: number): number => {
    switch (step) {
      case 1:
        return leakOf(beside(trial), weights);
      case 2:
        return airs.recall(shapeOf(trial.candidate), () => bass(trial, quiet(trial)));
      case 3:
        return bass(trial, trial.path);
      default:
        return leakOf(openOf(trial.path, drafted(2)), weights);
    }
  };
  return {
    refine: (trial) => {
      trial.step += 1;
      trial.leastLeak = leakAt(trial, trial.step);
    },
    besideBox: (trial) => leakAt(trial, 1),
  };
};
