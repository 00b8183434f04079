import { describe, expect, test } from 'vitest';
import type { Assembly, Frame, Layer } from '../../../src/engine/assembly/index.ts';
import { createPredictor } from '../../../src/engine/transmission/index.ts';
import { BLOCK, GLASS, GYPSUM, cavity, frame, layup, sheet } from '../../support/layups.ts';

/**
 * Changes that code tables show with a clear sign (National Building Code of Canada 2020, tables 9.10.3.1: pairs that
 * differ in one thing). The gain must have that sign; sizes are left to the measured record.
 */
const predictor = createPredictor();
const STC = (assembly: Assembly): number => predictor.predict(assembly, { resolution: 'draft' }).ratings.STC ?? NaN;

const boards = (count: number): Layer[] => Array.from({ length: count }, () => sheet(GYPSUM, 12.7));
const wall = (depth: number, wool: number, studs: Frame, near = 1, far = near): Assembly =>
  layup(...boards(near), cavity(depth, wool, studs), ...boards(far));

const steel = frame({ stud: 'steel' });
const bars = frame({ fixing: 'resilient-bar', barSpacing: 0.4 });
const twin = frame({ arrangement: 'twin' });
const staggered = frame({ arrangement: 'staggered' });

const pairs: readonly (readonly [string, Assembly, Assembly, number])[] = [
  ['filling a timber stud wall does no harm', wall(89, 0, frame()), wall(89, 89, frame()), 0],
  ['filling a steel stud wall', wall(92, 0, steel), wall(92, 92, steel), 3],
  ['filling a wall on resilient bars', wall(102, 0, bars), wall(102, 89, bars), 3],
  ['filling a staggered stud wall', wall(140, 0, staggered), wall(140, 89, staggered), 3],
  ['filling the second row of a twin stud wall', wall(203, 89, twin), wall(203, 178, twin), 1],
  ['filling a twin stud wall', wall(203, 0, twin), wall(203, 178, twin), 5],
  ['spreading steel studs from 400 to 600 mm', wall(64, 64, steel), wall(64, 64, { ...steel, spacing: 0.6 }), 1],
  ['spreading timber studs behind bars', wall(102, 89, bars), wall(102, 89, { ...bars, spacing: 0.6 }), 0.5],
  ['spreading the bars', wall(102, 89, bars), wall(102, 89, { ...bars, barSpacing: 0.6 }), 0.5],
  ['second boards on both sides of steel studs', wall(92, 92, steel), wall(92, 92, steel, 2), 4],
  ['second boards on both sides of timber studs', wall(89, 89, frame()), wall(89, 89, frame(), 2), 2],
  ['deeper steel studs', wall(64, 64, steel), wall(92, 92, steel), 1],
  ['bars instead of direct fixing', wall(89, 89, frame()), wall(102, 89, bars), 6],
  ['clips instead of bars', wall(102, 89, bars), wall(102, 89, { ...bars, fixing: 'isolating-clip' }), 1],
  ['light instead of heavy steel', wall(92, 92, { ...steel, gauge: 0.0012 }), wall(92, 92, steel), 3],
  [
    'glass: a wider gap',
    layup(sheet(GLASS, 6), cavity(12), sheet(GLASS, 6)),
    layup(sheet(GLASS, 6), cavity(100), sheet(GLASS, 6)),
    3,
  ],
];

describe('gains have the sign of the code tables', () => {
  test.each(pairs)('%s', (_, before, after, least) => {
    expect(STC(after) - STC(before)).toBeGreaterThanOrEqual(least);
  });
});

describe('mistakes cost', () => {
  test('the same boards split over a third leaf lose bass', () => {
    const two = wall(190, 180, twin, 2);
    const three = layup(sheet(GYPSUM, 12.7), cavity(88, 85), ...boards(2), cavity(88, 85), sheet(GYPSUM, 12.7));
    const bass = (assembly: Assembly): number => {
      const { R, bands } = predictor.predict(assembly);
      return R[bands.indexOf(63)] ?? NaN;
    };
    expect(bass(two) - bass(three)).toBeGreaterThan(2);
  });

  // figures of the trade's wall charts, same frames throughout: common practice
  const one = boards(1);
  const framed = cavity(90, 90, frame());
  const chart: readonly (readonly [string, Assembly, number])[] = [
    ['a single frame', layup(...one, framed, ...one), 36],
    ['two frames boarded on both faces', layup(...one, framed, ...one, cavity(25), ...one, framed, ...one), 40],
    ['one inner board taken away', layup(...one, framed, ...one, cavity(115, 90, twin), ...one), 50],
    ['both inner boards taken away', wall(205, 180, twin), 57],
    ['both inner boards moved outside', wall(205, 180, twin, 2), 63],
  ];
  test.each(chart)('%s rates near the wall chart', (_, build, rating) => {
    expect(Math.abs(STC(build) - rating)).toBeLessThanOrEqual(3);
  });

  test('a board inside a double frame costs bass and rating against the same board outside', () => {
    const inside = predictor.predict(layup(...one, framed, ...one, cavity(115, 90, twin), ...one));
    const outside = predictor.predict(wall(205, 180, twin, 1, 2));
    expect((outside.ratings.STC ?? NaN) - (inside.ratings.STC ?? NaN)).toBeGreaterThanOrEqual(5);
    for (const band of [63, 80, 100, 125]) {
      const b = inside.bands.indexOf(band);
      expect((outside.R[b] ?? NaN) - (inside.R[b] ?? NaN)).toBeGreaterThan(3);
    }
  });

  test('stiff studs put the dip of a single timber frame near 125 Hz, wider spacing lower', () => {
    // Bradley and Birta, J. Acoust. Soc. Am. 110 (2001) 3086-3096 (from memory)
    const lowest = (spacing: number): number => {
      const { R, bands } = predictor.predict(wall(89, 89, frame({ spacing })));
      return bands.filter((band) => band >= 50 && band <= 200).reduce((a, b) => (value(b) < value(a) ? b : a));
      function value(band: number): number {
        return R[bands.indexOf(band)] ?? NaN;
      }
    };
    expect(lowest(0.4)).toBeGreaterThanOrEqual(80);
    expect(lowest(0.4)).toBeLessThanOrEqual(160);
    expect(lowest(0.6)).toBeLessThan(lowest(0.4));
  });

  test('a thin lining on masonry is worse than the bare wall around its resonance', () => {
    const bare = predictor.predict(layup(sheet(BLOCK, 100)));
    const lined = predictor.predict(layup(sheet(BLOCK, 100), cavity(25), sheet(GYPSUM, 12.5)));
    const i = lined.bands.indexOf(125);
    expect(lined.R[i] ?? NaN).toBeLessThan(bare.R[i] ?? NaN);
  });

  test('swapping the sides of a wall changes nothing', () => {
    const there = predictor.predict(wall(102, 89, bars, 1, 2));
    const back = predictor.predict(wall(102, 89, bars, 2, 1));
    there.R.forEach((R, b) => expect(R).toBeCloseTo(back.R[b] ?? NaN, 9));
  });
});
