import { carrying, type DesignSpace } from './designAir.ts';
import { createDraftBoxes } from './designDraft.ts';
import type { DesignCandidate } from './designGrid.ts';
import { BASS_RICH, LIVING, costOfLeak, leakOf, leakOfCost, type LeakyWall } from './designLeak.ts';
import { COARSE_STEP, createRefiner, type Trial } from './designSearch.ts';
import { ventTransmission } from './openings/index.ts';
import type { BoxSound, VentBox, VentPath, VentPorts, VentSound } from './openings/index.ts';
import { createMemory, requirePositive, toRatio } from './quantities/index.ts';

/** What a vent is to do. */
export interface DesignWish extends LeakyWall {
  /** air through this vent, m³/s, > 0 */
  readonly flow: number;
  /** what all such vents of the wall together may cost it, dB, > 0 */
  readonly mostCost: number;
  /** false: cost for living noise over 100 Hz to 3.15 kHz; true: for music rich in bass over 50 Hz to 3.15 kHz */
  readonly bass: boolean;
}

/** A vent with its sound from the fine grid. */
export interface VentDesign {
  readonly candidate: DesignCandidate;
  readonly path: VentPath;
  readonly sound: VentSound;
  /** Pa at the wished flow */
  readonly loss: number;
  /** m/s, fastest in a duct or box */
  readonly speed: number;
  /** dB, of all such vents of the wall together, in the wish's own sense */
  readonly cost: number;
  /** dB, of this vent alone, for living noise: as the station tells it */
  readonly costAlone: number;
}

/** How much work the answer stands on. */
export interface DesignTried {
  /** ways to build it, and those that carry the air quietly through the two narrowest ducts that do */
  readonly all: number;
  readonly airy: number;
  /** boxes of different inside among those that carry the air */
  readonly boxes: number;
  /** of them solved on the coarse grid, at least up to 400 Hz; in all bands that count; and on the fine grid */
  readonly coarse: number;
  readonly whole: number;
  readonly fine: number;
}

export interface DesignAnswer {
  /** null where none does it */
  readonly design: VentDesign | null;
  /** where none does it: the smallest of those that cost least; and of those of one box alone, where that has two */
  readonly nearest: VentDesign | null;
  readonly nearestOfOne: VentDesign | null;
  /** dB: what would be left if the boxes let nothing through, at least; null where nothing carries the air */
  readonly floor: number | null;
  readonly tried: DesignTried;
}

/** What the coarse grid is doubted by, dB of the leak. @source own runs: 0.7 dB at most, see createDraftBoxes */
export const COARSE_DOUBT = 1;
/** Of those that cost so little more than the least, the smallest is shown, dB: nobody hears it. */
export const AS_GOOD = 0.3;

/**
 * Best first: only those that may yet be as good as the best known are brought closer.
 * @param asGood what may leak where the best leaks so much, m²
 */
const leastLeaking = (
  trials: readonly Trial[],
  refine: (trial: Trial) => void,
  asGood: (leak: number) => number,
): Trial | null => {
  let most = Math.min(...trials.map(({ step, leastLeak }) => (step === COARSE_STEP ? asGood(leastLeak) : Infinity)));
  const open = (): Trial | null =>
    trials.reduce<Trial | null>((least, it) => {
      if (it.step === COARSE_STEP || it.leastLeak > most) return least;
      return least === null || it.leastLeak < least.leastLeak ? it : least;
    }, null);
  for (let next = open(); next !== null; next = open()) {
    refine(next);
    if (next.step === COARSE_STEP) most = Math.min(most, asGood(next.leastLeak));
  }
  return trials.find((it) => it.step === COARSE_STEP && it.leastLeak <= most) ?? null;
};

/**
 * The smallest vent that gives the air and costs its wall no more than wished. Smallest first, each candidate is left
 * as soon as what is known of it leaks too much: what passes beside any box, then its bass by the air alone, its bass,
 * and all bands by the wave solution on the coarse grid; what may be enough by that is solved on the fine grid.
 * @param wish air, cost, wall
 * @param space what to choose among
 * @param ports solves boxes finely, and R of boards
 * @param onsolved told how many boxes have been solved coarsely by now, and of at most how many
 * @returns the design, or the nearest to it
 * @throws RangeError for a flow or cost ≤ 0
 * @validity as ventTransmission
 * @source branch and bound over a grid of sizes; the models are those of breathe
 */
export const designVent = (
  wish: DesignWish,
  space: DesignSpace,
  ports: VentPorts,
  onsolved: (boxes: number, of: number) => void = () => undefined,
): DesignAnswer => {
  requirePositive('flow', wish.flow, 'm³/s');
  requirePositive('cost', wish.mostCost, 'dB');
  const weights = wish.bass ? BASS_RICH : LIVING;
  const trials = carrying(space, wish.flow);
  const insides = new Set(trials.map(({ candidate }) => JSON.stringify(candidate.box))).size;
  const fines = createMemory<BoxSound>(Infinity);
  const drafts = createDraftBoxes(wish.bass ? 50 : 100, () => onsolved(drafts.count(), insides));
  const { refine, besideBox } = createRefiner(drafts, ports.reduction, weights);
  const boxSound = (box: VentBox): BoxSound => fines.recall(JSON.stringify(box), () => ports.boxSound(box));
  const finely = ({ candidate, path, loss, speed }: Trial): VentDesign => {
    const sound = ventTransmission(path, { ...ports, boxSound });
    const cost = costOfLeak(leakOf(sound.openArea, weights), wish, weights);
    const costAlone = costOfLeak(leakOf(sound.openArea, LIVING), wish, LIVING, 1);
    return { candidate, path, sound, loss, speed, cost, costAlone };
  };
  const answer = (
    design: VentDesign | null,
    nearest: VentDesign | null = null,
    nearestOfOne: VentDesign | null = null,
  ): DesignAnswer => ({
    design,
    nearest,
    nearestOfOne,
    floor: trials.length > 0 ? costOfLeak(Math.min(...trials.map(besideBox)), wish, weights) : null,
    tried: {
      all: space.candidates.length,
      airy: trials.length,
      boxes: insides,
      coarse: drafts.count(),
      whole: drafts.whole(),
      fine: fines.count(),
    },
  });
  const nearestAmong = (some: readonly Trial[]): VentDesign | null => {
    const asGood = (leak: number): number => leakOfCost(costOfLeak(leak, wish, weights) + AS_GOOD, wish, weights);
    const best = leastLeaking(some, refine, asGood);
    return best && finely(best);
  };

  const most = leakOfCost(wish.mostCost, wish, weights);
  const hopeless = most * toRatio(COARSE_DOUBT);
  for (const trial of trials) {
    while (trial.step < COARSE_STEP && trial.leastLeak <= hopeless) refine(trial);
    if (trial.leastLeak > hopeless) continue;
    const design = finely(trial);
    if (design.cost <= wish.mostCost) return answer(design);
  }
  const nearest = nearestAmong(trials);
  const ofOne = nearest?.candidate.boxes === 2 ? trials.filter(({ candidate }) => candidate.boxes === 1) : [];
  return answer(null, nearest, nearestAmong(ofOne));
};
