import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slitTransmissions } from '../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES, toLevel, toRatio } from '../../../src/engine/quantities/index.ts';
import type { Part } from '../../../src/engine/shell/index.ts';
import {
  bassReduction,
  compositeReduction,
  equalEnergyReduction,
  sources,
  wholeSpread,
} from '../../../src/engine/shell/index.ts';
import { repeatable } from '../../support/repeatable.ts';
import { bassHeavy, curve, flat, level, part, shellOf, trebleHeavy } from './builds.ts';

const reduction = fc.double({ min: -5, max: 90, noNaN: true });
const curves = fc.array(reduction, { minLength: 27, maxLength: 27 });
const areas = fc.double({ min: 0.01, max: 60, noNaN: true });
const shells = fc
  .array(fc.record({ area: areas, R: curves }), { minLength: 1, maxLength: 8 })
  .map((list): Part[] => list.map(({ area, R }, i) => part(`part-${i}`, area, curve(R))));
const settings = repeatable(12354, 60);
const within = 1e-9;

describe('laws of the whole', () => {
  it('R of the whole lies between the least and the greatest of its parts in every band', () => {
    fc.assert(
      fc.property(shells, (parts) => {
        const shell = shellOf(parts);
        shell.R.forEach((R, b) => {
          const all = shell.parts.map((one) => one.R[b] ?? Number.NaN);
          expect(R).toBeGreaterThanOrEqual(Math.min(...all) - within);
          expect(R).toBeLessThanOrEqual(Math.max(...all) + within);
        });
      }),
      settings,
    );
  });
  it('adding a part never lowers what gets out', () => {
    fc.assert(
      fc.property(shells, areas, curves, (parts, area, R) => {
        const before = shellOf(parts);
        const after = shellOf([...parts, part('added', area, curve(R))]);
        const open = (shell: typeof before, b: number): number => shell.area * toRatio(-(shell.R[b] ?? 0));
        THIRD_OCTAVES.forEach((_, b) => {
          expect(open(after, b)).toBeGreaterThanOrEqual(open(before, b) * (1 - within));
        });
      }),
      settings,
    );
  });
  it('shares are between 0 and 1 and sum to 1, in each band and overall, for every source', () => {
    fc.assert(
      fc.property(shells, fc.constantFrom(flat, bassHeavy, trebleHeavy), (parts, source) => {
        const shell = shellOf(parts, source);
        expect(shell.parts.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 9);
        THIRD_OCTAVES.forEach((_, b) => {
          expect(shell.parts.reduce((sum, one) => sum + (one.shareByBand[b] ?? 0), 0)).toBeCloseTo(1, 9);
        });
        expect(shell.parts.every(({ share }) => share >= 0 && share <= 1)).toBe(true);
      }),
      settings,
    );
  });
  it('a perfect part never hurts, and does at least as much as one twice as good', () => {
    fc.assert(
      fc.property(shells, (parts) => {
        const shell = shellOf(parts);
        for (const one of shell.parts) {
          one.ifPerfect.R.forEach((R, b) => {
            expect(R).toBeGreaterThanOrEqual((one.ifTwiceAsGood.R[b] ?? Number.NaN) - within);
            expect(one.ifTwiceAsGood.R[b]).toBeGreaterThanOrEqual((shell.R[b] ?? Number.NaN) - within);
          });
          expect(one.ifTwiceAsGood.bassGain).toBeGreaterThanOrEqual(-within);
        }
      }),
      settings,
    );
  });
  it('the part with the largest share stands first and limits', () => {
    fc.assert(
      fc.property(shells, (parts) => {
        const shell = shellOf(parts);
        const shares = shell.parts.map(({ share }) => share);
        expect(shares).toEqual([...shares].sort((a, b) => b - a));
        expect(shell.limiting).toBe(shell.parts[0]?.id);
      }),
      settings,
    );
  });
  it('the order of the parts changes nothing', () => {
    fc.assert(
      fc.property(shells, (parts) => {
        const backwards = shellOf([...parts].reverse());
        shellOf(parts).R.forEach((R, b) => {
          expect(backwards.R[b]).toBeCloseTo(R, 9);
        });
      }),
      settings,
    );
  });
});

describe('shares by source', () => {
  const boomy = curve(THIRD_OCTAVES.map((band) => (band < 200 ? 20 : 60)));
  const leaky = curve(THIRD_OCTAVES.map((band) => (band < 200 ? 50 : 30)));
  const parts = [part('roof', 10, boomy, 'roof'), part('door', 10, leaky, 'door')];
  it('a bass-heavy source leaves by the part weak in the bass, a shrill one by the other', () => {
    expect(shellOf(parts, bassHeavy).limiting).toBe('roof');
    expect(shellOf(parts, trebleHeavy).limiting).toBe('door');
  });
  it('every preset has a finite level in all 27 bands, and its third octaves sum to the octave', () => {
    expect(sources[0]?.key).toBe('flat');
    for (const { spectrum } of sources) {
      expect(spectrum.values).toHaveLength(27);
      expect(spectrum.values.every(Number.isFinite)).toBe(true);
    }
    const drums = sources.find(({ key }) => key === 'drum-kit-hard')?.spectrum.values.slice(3, 6) ?? [];
    expect(toLevel(drums.reduce((sum, one) => sum + toRatio(one), 0))).toBeCloseTo(98, 1);
  });
  it('only 50 Hz to 5 kHz count towards the share overall', () => {
    const outside = curve(THIRD_OCTAVES.map((band) => (band < 50 || band > 5000 ? 0 : 80)));
    const shell = shellOf([part('a', 10, outside), part('b', 10, level(60))]);
    expect(shell.limiting).toBe('b');
  });
});

describe('openings and sealed parts in the whole', () => {
  const wall = part('wall', 12, level(55));
  const slit: Part = {
    ...part('gap', 0.0027, { kind: 'slit', length: 0.9, width: 0.003, depth: 0.044, edge: true }, 'slit'),
    surface: 'wall',
  };
  it('a slit counts by its own area times its transmission', () => {
    const shell = shellOf([wall, slit]);
    const [tau = 0] = slitTransmissions(0.003, 0.044, true, [1000], 'diffuse');
    const b = THIRD_OCTAVES.indexOf(1000);
    const expected = -toLevel((12 * toRatio(-55) + 0.0027 * tau) / (12 + 0.0027));
    expect(shell.R[b]).toBeCloseTo(expected, 9);
    expect(shell.limiting).toBe('gap');
    expect(shell.parts[0]?.ratings).toBeNull();
  });
  it('a gap shorter than half a wavelength is marked, and the whole says so where the gap tells', () => {
    const shell = shellOf([wall, slit]);
    expect(shell.extrapolated[3]).toContain('gap: Shorter than half a wavelength');
    expect(shell.extrapolated[THIRD_OCTAVES.indexOf(2000)]).toBeNull();
  });
  it('a sealed part lets nothing through and keeps its area', () => {
    const sealed = shellOf([wall, { ...slit, element: { kind: 'sealed' } }]);
    expect(sealed.parts.find(({ id }) => id === 'gap')?.share).toBe(0);
    expect(sealed.R[15]).toBeGreaterThan(55);
    expect(sealed.area).toBeCloseTo(12.0027, 9);
  });
  it('a shell through which nothing gets has no limiting part, no ratings and no infinities', () => {
    for (const parts of [[], [part('wall', 10, { kind: 'sealed' })]]) {
      const shell = shellOf(parts);
      expect(shell.limiting).toBeNull();
      expect(shell.ratings.Rw).toBeNull();
      expect(shell.R.every(Number.isFinite)).toBe(true);
    }
  });
  it('openings larger than their surface are refused by name', () => {
    expect(() => shellOf([part('North wall', -0.4, level(50))])).toThrow(
      new RangeError('area of North wall must be > 0 m², got -0.4: make its openings smaller or the surface larger'),
    );
  });
  it('a source with a gap is refused', () => {
    expect(() => shellOf([wall], { bands: [100], values: [90] })).toThrow('source must have a finite level');
  });
});

describe('doubt of the whole', () => {
  it('is that of its only part, and no more than the largest of several', () => {
    const one = shellOf([part('wall', 10, level(50))]);
    expect(one.spread[THIRD_OCTAVES.indexOf(50)]).toBeCloseTo(6.8, 9);
    const two = shellOf([part('wall', 10, level(50)), part('roof', 10, level(50.001))]);
    expect(two.spread[THIRD_OCTAVES.indexOf(50)]).toBeCloseTo(6.8 / Math.SQRT2, 2);
    const alike = shellOf([part('wall', 10, level(50)), part('roof', 10, level(50))]);
    expect(alike.spread[THIRD_OCTAVES.indexOf(50)]).toBeCloseTo(6.8, 9);
  });
  it('parts of one family err together', () => {
    const doubt = { share: 0.5, spread: 4 };
    expect(
      wholeSpread([
        { ...doubt, family: 'a' },
        { ...doubt, family: 'a' },
      ]),
    ).toBeCloseTo(4, 9);
    expect(
      wholeSpread([
        { ...doubt, family: 'a' },
        { ...doubt, family: 'b' },
      ]),
    ).toBeCloseTo(4 / Math.SQRT2, 9);
  });
});

describe('docstring examples', () => {
  it('hold', () => {
    expect(
      compositeReduction([
        { area: 68, R: 55 },
        { area: 2, R: 30 },
      ]),
    ).toBeCloseTo(45, 0);
    expect(equalEnergyReduction(55, 68, 2)).toBeCloseTo(39.7, 1);
    expect(bassReduction({ bands: [50, 63, 80, 100], values: [20, 20, 20, 20] })).toBeCloseTo(20, 9);
    expect(wholeSpread([{ share: 1, spread: 3, family: 'a' }])).toBe(3);
  });
});
