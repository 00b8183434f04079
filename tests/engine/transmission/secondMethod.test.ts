import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assembly } from '../../../src/engine/assembly/index.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import { rateThirdOctaves } from '../../../src/engine/ratings/index.ts';
import { contradictions, secondMethod } from '../../../src/engine/transmission/index.ts';
import { anyLayup } from '../../support/arbitraryLayup.ts';
import { BLOCK, GYPSUM, cavity, frame, layup, LIMP, sheet } from '../../support/layups.ts';
import { repeatable } from '../../support/repeatable.ts';
import { assemblyOf, measuredCases } from '../../reference/tl/measuredCases.ts';

const R = (assembly: Assembly, size?: readonly [number, number]): readonly number[] => {
  const method = secondMethod(assembly, size);
  if (!method) throw new Error('no second method');
  return method.R;
};
const at = (band: number): number => THIRD_OCTAVES.indexOf(band);
const boards = (count: number) => Array.from({ length: count }, () => sheet(GYPSUM, 12.5));
const twin = frame({ arrangement: 'twin' });
const steel = frame({ stud: 'steel' });

describe('laws of the second method', () => {
  it('swapping the sides of a wall changes nothing', () => {
    const there = R(layup(...boards(2), cavity(100, 80, steel), sheet(GYPSUM, 18)));
    const back = R(layup(sheet(GYPSUM, 18), cavity(100, 80, steel), ...boards(2)));
    there.forEach((value, b) => expect(value).toBeCloseTo(back[b] ?? NaN, 6));
  });
  it('gives finite, never negative R for anything that can be built of one or two leaves', () => {
    fc.assert(
      fc.property(anyLayup, (assembly) => {
        const method = secondMethod(assembly);
        for (const value of method?.R ?? []) {
          expect(Number.isFinite(value)).toBe(true);
          expect(value).toBeGreaterThanOrEqual(-1e-9);
        }
      }),
      repeatable(1970, 60),
    );
  });
  it('well below coincidence a board of twice the mass gains 6 dB', () => {
    const soft = { ...GYPSUM, youngsModulus: 2e7 };
    const [light, heavy] = [R(layup(sheet(soft, 12.5))), R(layup(sheet({ ...soft, density: 1400 }, 12.5)))];
    expect((heavy[at(250)] ?? 0) - (light[at(250)] ?? 0)).toBeCloseTo(6, 0);
  });
  it('above it an unframed wall full of wool is the sum of its leaves with what Sharp (1978) gives for the cavity', () => {
    const [one, other] = [sheet(GYPSUM, 12.5), sheet(GYPSUM, 9.5)];
    const [wall, first, second] = [layup(one, cavity(60, 60), other), layup(one), layup(other)].map(
      (assembly) => secondMethod(assembly, [4, 2.5])?.R ?? [],
    ) as [readonly number[], readonly number[], readonly number[]];
    for (const [band, gain] of [
      [250, 20 * Math.log10(250 * 0.06) - 29],
      [400, 20 * Math.log10(400 * 0.06) - 29],
    ] as const)
      expect(wall[at(band)]).toBeCloseTo((first[at(band)] ?? NaN) + (second[at(band)] ?? NaN) + gain, 0);
  });
  it('below the resonance both leaves count as one mass', () => {
    const wall = R(layup(sheet(GYPSUM, 12.5), cavity(10), sheet(GYPSUM, 12.5)));
    const soft = { ...GYPSUM, youngsModulus: 1e4 };
    const one = R(layup(sheet(soft, 25)), [4, 2.5]);
    expect(Math.abs((wall[at(100)] ?? 0) - (one[at(100)] ?? 0))).toBeLessThan(0.5);
  });
  it('filling the cavity, parting the frame and doubling the boards never lose in the middle', () => {
    const walls: readonly (readonly [Assembly, Assembly])[] = [
      [
        layup(...boards(1), cavity(100, 0, twin), ...boards(1)),
        layup(...boards(1), cavity(100, 100, twin), ...boards(1)),
      ],
      [
        layup(...boards(1), cavity(100, 80, frame()), ...boards(1)),
        layup(...boards(1), cavity(100, 80, twin), ...boards(1)),
      ],
      [
        layup(...boards(1), cavity(100, 80, steel), ...boards(1)),
        layup(...boards(2), cavity(100, 80, steel), ...boards(2)),
      ],
    ];
    for (const [before, after] of walls) {
      const [a, b] = [R(before), R(after)];
      for (const band of [315, 500, 800, 1250]) expect(b[at(band)]).toBeGreaterThan((a[at(band)] ?? 0) + 1);
    }
  });
  it('says where it does not hold: below 100 Hz and round the resonance', () => {
    const { outside = [] } = secondMethod(layup(sheet(GYPSUM, 12.5), cavity(12), sheet(GYPSUM, 12.5))) ?? {};
    expect(outside[at(50)]).not.toBeNull();
    expect(outside[at(315)]).toContain('resonance');
    expect(outside[at(2000)]).toBeNull();
  });
  it('is none for a limp single leaf and for three leaves', () => {
    expect(secondMethod(layup(sheet(LIMP, 5)))).toBeNull();
    expect(secondMethod(layup(...boards(1), cavity(50), ...boards(1), cavity(50), ...boards(1)))).toBeNull();
  });
  it('contradicts only where it is more than 5 dB off, from 100 Hz to 3.15 kHz', () => {
    const method = secondMethod(layup(sheet(BLOCK, 140)));
    if (!method) throw new Error('no second method');
    const off = (difference: number) =>
      contradictions(
        method.R.map((value) => value - difference),
        method,
      );
    expect(off(4.9)).toHaveLength(0);
    expect(off(5.1).map(({ band }) => band)).toEqual(THIRD_OCTAVES.filter((band) => band >= 100 && band <= 3150));
    expect(off(-6)[0]?.difference).toBeCloseTo(-6, 9);
  });
});

describe('the second method, not fitted to anything, on the measured record', () => {
  const errorsOf = (start: string): readonly number[] =>
    measuredCases().flatMap((it) => {
      const method = secondMethod(assemblyOf(it));
      if (!method || !it.class.startsWith(start) || it.measured.bands_Hz) return [];
      const { STC, Rw } = rateThirdOctaves({ bands: method.bands, values: method.R });
      return [it.measured.STC === undefined ? (Rw ?? NaN) - (it.measured.Rw ?? NaN) : (STC ?? NaN) - it.measured.STC];
    });
  const mean = (errors: readonly number[]): number => errors.reduce((sum, error) => sum + error, 0) / errors.length;
  it('comes within 2 dB on average and scatters by no more than 3 dB over the framed walls', () => {
    const errors = errorsOf('stud wall');
    const middle = mean(errors);
    const square = errors.reduce((sum, error) => sum + (error - middle) ** 2, 0);
    expect(errors.length).toBeGreaterThan(100);
    expect(Math.abs(middle)).toBeLessThan(2);
    expect(Math.sqrt(square / (errors.length - 1))).toBeLessThan(3);
  });
  it.each([
    ['floor', 4],
    ['double glazing', 4],
    ['masonry + lining', 6],
  ])('is not far off on average: %s within %d dB', (start, most) => {
    const errors = errorsOf(start);
    expect(errors.length).toBeGreaterThan(2);
    expect(Math.abs(mean(errors))).toBeLessThan(most);
  });
});
