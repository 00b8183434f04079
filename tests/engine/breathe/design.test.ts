import { describe, expect, it } from 'vitest';
import { carrying } from '../../../src/engine/designAir.ts';
import { designBoxes, designGrid } from '../../../src/engine/designGrid.ts';
import { designLimits } from '../../../src/engine/designLimits.ts';
import { overallReduction } from '../../../src/engine/breathe.ts';
import { AS_GOOD, COARSE_DOUBT, designVent, type VentDesign } from '../../../src/engine/designVent.ts';
import { boxFaults, ventBoxGeometry, withVents } from '../../../src/engine/openings/index.ts';
import { CASINGS, SMALL, fineCost, ports, spaceOf, wish } from './designSpace.ts';

const space = spaceOf(SMALL);
const designed = (asked: typeof wish, within = space): VentDesign => {
  const { design } = designVent(asked, within, ports);
  if (!design) throw new Error('there is a box for this');
  return design;
};

describe('the boxes to choose among', () => {
  it('can be built, to the millimetre, the one that takes least room first', () => {
    const boxes = designBoxes(10_000);
    expect(boxes.length).toBeGreaterThan(200);
    expect(boxes.filter((box) => boxFaults(ventBoxGeometry(box)).length > 0)).toEqual([]);
    for (const { at, gap } of boxes.flatMap(({ partitions }) => partitions))
      for (const length of [at, gap]) expect(Math.abs(length * 1000 - Math.round(length * 1000))).toBeLessThan(1e-9);
    const grid = designGrid(10_000, CASINGS);
    grid.forEach(({ volume }, i) => expect(volume).toBeGreaterThanOrEqual(grid[i - 1]?.volume ?? 0));
  });

  it('take more room with more boards, with a second box and with a lined duct', () => {
    const [first] = designBoxes(10_000, SMALL);
    const of = (boxes: number, duct: number, key: string) =>
      space.candidates.find(
        (it) =>
          it.boxes === boxes &&
          it.linedDuct === duct &&
          it.casing.key === key &&
          JSON.stringify(it.box) === JSON.stringify(first),
      )?.volume ?? NaN;
    expect(of(1, 0, 'one')).toBeCloseTo(0.536 * 0.386 * 0.186, 9);
    expect(of(1, 0, 'two')).toBeGreaterThan(of(1, 0, 'one'));
    expect(of(2, 0, 'one')).toBeCloseTo(2 * of(1, 0, 'one'), 9);
    expect(of(1, 1, 'one')).toBeCloseTo(of(1, 0, 'one') + 0.336 ** 2, 9);
  });
});

describe('the smallest vent that does it', () => {
  it('is the one that trying them all on the fine grid gives, with the bass and without', { timeout: 240_000 }, () => {
    const answers = new Set<number | undefined>();
    const carried = carrying(space, wish.flow).map(({ candidate }) => candidate);
    for (const bass of [false, true])
      for (const mostCost of [0.01, 0.06, 0.2, 0.45, 0.8, 1.2]) {
        const asked = { ...wish, mostCost, bass };
        const first = carried.find((candidate) => fineCost(candidate, asked) <= mostCost);
        const { design, nearest } = designVent(asked, space, ports);
        expect(design?.candidate).toEqual(first);
        expect(nearest === null).toBe(first !== undefined);
        answers.add(first?.volume);
      }
    expect(answers.size).toBeGreaterThan(5);
  });

  it('is never larger for a laxer wish, nor smaller for more such vents', { timeout: 120_000 }, () => {
    const rooms = [0.05, 0.12, 0.3, 0.6, 0.9, 2].map((mostCost) => designed({ ...wish, mostCost }).candidate.volume);
    rooms.forEach((volume, i) => expect(volume).toBeLessThanOrEqual(rooms[i - 1] ?? Infinity));
    expect(rooms.at(-1)).toBeLessThan(rooms[0] ?? 0);
    const [alone, among] = [designed({ ...wish, mostCost: 0.9 }), designed({ ...wish, mostCost: 0.9, count: 4 })];
    expect(among.candidate.volume).toBeGreaterThan(alone.candidate.volume);
  });

  it('carries the air quietly, and costs what the whole wall loses', { timeout: 60_000 }, () => {
    const { cost, costAlone, loss, speed, sound } = designed({ ...wish, mostCost: 0.6, count: 2 });
    expect(cost).toBeLessThanOrEqual(0.6);
    expect(loss).toBeLessThanOrEqual(30);
    expect(speed).toBeLessThanOrEqual(2.5);
    const lost = (vents: number): number =>
      overallReduction(wish.wallR) -
      overallReduction(
        wish.wallR.map((R, b) =>
          withVents(
            R,
            wish.wallArea,
            Array.from({ length: vents }, () => sound.normalisedDifference[b] ?? 0),
          ),
        ),
      );
    expect(cost).toBeCloseTo(lost(2), 6);
    expect(costAlone).toBeCloseTo(lost(1), 6);
  });

  it('goes by the narrower duct where that carries the air', { timeout: 60_000 }, () => {
    const both = spaceOf({ ...SMALL, diameters: [0.1, 0.15], linedDucts: [0] });
    expect(designed({ ...wish, mostCost: 8 }, both).candidate.diameter).toBe(0.1);
    expect(designed({ ...wish, mostCost: 16, flow: 0.03 }, both).candidate.diameter).toBe(0.15);
  });

  it('is told with the boxes that were solved for it', { timeout: 60_000 }, () => {
    const told: number[] = [];
    const asked: number[] = [];
    const { tried } = designVent({ ...wish, mostCost: 0.3 }, space, ports, (boxes, of) => {
      told.push(boxes);
      asked.push(of);
    });
    expect(told).toEqual(Array.from({ length: tried.coarse }, (_, i) => i + 1));
    expect(new Set(asked)).toEqual(new Set([tried.boxes]));
    expect(tried.boxes).toBeGreaterThanOrEqual(tried.coarse);
  });

  it('is asked for with a flow and a cost', () => {
    expect(() => designVent({ ...wish, flow: 0 }, space, ports)).toThrow('flow must be > 0 m³/s, got 0');
    expect(() => designVent({ ...wish, mostCost: -1 }, space, ports)).toThrow('cost must be > 0 dB, got -1');
  });
});

describe('where nothing is enough', () => {
  const heavy = { ...wish, wallR: wish.wallR.map((R) => R + 25), mostCost: 0.5 };

  it('the nearest is among the best of all, and no better than its joints', { timeout: 240_000 }, () => {
    const { design, nearest, nearestOfOne, floor } = designVent(heavy, space, ports);
    expect(design).toBeNull();
    const costs = carrying(space, heavy.flow).map(({ candidate }) => fineCost(candidate, heavy));
    expect(nearest?.cost ?? NaN).toBeGreaterThanOrEqual(Math.min(...costs));
    expect(nearest?.cost ?? NaN).toBeLessThan(Math.min(...costs) + AS_GOOD + COARSE_DOUBT);
    expect(nearest?.candidate.boxes).toBe(2);
    expect(nearestOfOne?.candidate.boxes).toBe(1);
    expect(nearestOfOne?.cost ?? NaN).toBeGreaterThan(nearest?.cost ?? NaN);
    expect(floor ?? NaN).toBeGreaterThan(0);
    expect(floor ?? NaN).toBeLessThan(Math.min(...costs));
  });

  it('it is told what limits it', { timeout: 60_000 }, () => {
    const { nearest } = designVent(heavy, space, ports);
    if (!nearest) throw new Error('there is a nearest');
    const { ways, bands, bass } = designLimits(nearest, heavy);
    expect(ways.length).toBeGreaterThan(2);
    for (const { cost } of ways) expect(cost).toBeLessThan(nearest.cost);
    ways.forEach(({ cost }, i) => expect(cost).toBeLessThanOrEqual(ways[i - 1]?.cost ?? Infinity));
    expect(bands.length).toBeGreaterThan(0);
    for (const band of bands) expect(band).toBeGreaterThanOrEqual(100);
    const losses = nearest.sound.insertionLoss.filter((_, b) => {
      const band = nearest.sound.bands[b] ?? 0;
      return band >= 50 && band <= 160;
    });
    expect(bass.loss).toBe(Math.min(...losses));
  });

  it('nothing is shown for air that no duct carries quietly', () => {
    const { design, nearest, floor, tried } = designVent({ ...wish, flow: 0.5 }, space, ports);
    expect([design, nearest, floor, tried.airy]).toEqual([null, null, null, 0]);
  });
});
