import { describe, expect, it } from 'vitest';
import { carrying } from '../../../src/engine/designAir.ts';
import { createDraftBoxes } from '../../../src/engine/designDraft.ts';
import { BASS_RICH, LIVING, costOfLeak, leakOf, leakOfCost } from '../../../src/engine/designLeak.ts';
import { COARSE_STEP, createRefiner } from '../../../src/engine/designSearch.ts';
import { COARSE_DOUBT } from '../../../src/engine/designVent.ts';
import { ventTransmission } from '../../../src/engine/openings/index.ts';
import { SMALL, fine, ports, spaceOf, wish } from './designSpace.ts';

const space = spaceOf(SMALL);
/** Wide and thinly lined: two of them in a row resonate most narrowly, and few lines a band missed it by 4 dB. */
const narrow = spaceOf({
  diameters: [0.125],
  lengths: [0.8, 1.2],
  widths: [0.7],
  linings: [0.025],
  partitions: [2, 3],
  linedDucts: [0],
});
/** What a curve between coarse lines may move where it ends sooner. */
const END_OF_CURVE = 1.01;

describe('what is known of a candidate before it is solved', () => {
  it.each([
    ['living noise', 100, LIVING],
    ['music rich in bass', 50, BASS_RICH],
  ])('never leaks more than it does in the end, for %s', { timeout: 120_000 }, (_, lowest, weights) => {
    const { refine, besideBox } = createRefiner(
      createDraftBoxes(lowest, () => undefined),
      ports.reduction,
      weights,
    );
    const some = carrying(space, wish.flow).filter((_, i) => i % 3 === 0);
    for (const trial of some) {
      const known: number[] = [];
      while (trial.step < COARSE_STEP) {
        refine(trial);
        known.push(trial.leastLeak);
      }
      known.forEach((least, i) => expect(least).toBeLessThanOrEqual((known[i + 1] ?? Infinity) * END_OF_CURVE));
      expect(besideBox(trial)).toBe(known[0]);
      // the boards by themselves are a bound as well
      const sound = ventTransmission(trial.path, ports);
      const boards = sound.ways.filter(({ kind }) => kind === 'casing');
      expect(boards.reduce((sum, { openArea }) => sum + leakOf(openArea, weights), 0)).toBeLessThan(
        leakOf(sound.openArea, weights),
      );
    }
  });

  it('is off the fine grid by less than what it is doubted by', { timeout: 240_000 }, () => {
    for (const [lowest, weights] of [
      [100, LIVING],
      [50, BASS_RICH],
    ] as const) {
      const drafts = createDraftBoxes(lowest, () => undefined);
      for (const { path } of [...carrying(space, wish.flow), ...carrying(narrow, wish.flow)]) {
        const by = (boxSound: typeof fine): number =>
          leakOf(ventTransmission(path, { ...ports, boxSound }).openArea, weights);
        const off = 10 * Math.log10(by((box) => drafts.sound(box, 2)) / by(fine));
        expect(Math.abs(off)).toBeLessThan(COARSE_DOUBT);
      }
    }
  });

  it('solves each box once, however it is built', () => {
    const told: number[] = [];
    const drafts = createDraftBoxes(100, () => told.push(1));
    const { refine } = createRefiner(drafts, ports.reduction, LIVING);
    const [one, ...others] = carrying(space, wish.flow);
    const alike = [one, ...others.filter(({ candidate }) => candidate.box === one?.candidate.box)].slice(0, 4);
    for (const trial of alike) while (trial && trial.step < COARSE_STEP) refine(trial);
    expect(alike.length).toBe(4);
    expect([drafts.count(), drafts.whole(), told.length]).toEqual([1, 1, 1]);
  });
});

describe('leak and cost', () => {
  it('are each other’s inverse, and twice the vents may leak half as much each', () => {
    for (const cost of [0.3, 1, 6]) {
      const leak = leakOfCost(cost, wish, LIVING);
      expect(costOfLeak(leak, wish, LIVING)).toBeCloseTo(cost, 9);
      expect(leakOfCost(cost, { ...wish, count: 2 }, LIVING)).toBeCloseTo(leak / 2, 12);
    }
  });

  it('weigh what is played by its share: the bass counts only where it is asked for', () => {
    const open = (band: number) => LIVING.map((_, b) => (b === band ? 1 : 0));
    const at63 = 4;
    expect(leakOf(open(at63), LIVING)).toBe(0);
    expect(leakOf(open(at63), BASS_RICH)).toBeCloseTo(10 ** -2.3, 9);
    for (const weights of [LIVING, BASS_RICH])
      expect(10 * Math.log10(weights.reduce((a, b) => a + b))).toBeCloseTo(0, 0);
  });
});
