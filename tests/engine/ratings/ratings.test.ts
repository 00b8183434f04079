import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { repeatable } from '../../support/repeatable.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import {
  bandValues,
  bandWidth,
  contourRw,
  rateThirdOctaves,
  soundTransmissionClass,
  weightedReduction,
} from '../../../src/engine/ratings/index.ts';

const curves = fc.array(fc.double({ min: -10, max: 120, noNaN: true }), {
  minLength: THIRD_OCTAVES.length,
  maxLength: THIRD_OCTAVES.length,
});
const settings = repeatable(717, 150);
const of = (values: readonly number[]) => ({ bands: THIRD_OCTAVES, values });

describe('laws of rating', () => {
  it('raising every band by a whole number of decibels raises Rw, STC and OITC by it and leaves C and Ctr alone', () => {
    fc.assert(
      fc.property(curves, fc.integer({ min: -20, max: 40 }), (values, rise) => {
        const tenths = values.map((value) => Math.round(10 * value) / 10);
        const before = rateThirdOctaves(of(tenths));
        const after = rateThirdOctaves(of(tenths.map((value) => value + rise)));
        expect((after.Rw ?? 0) - (before.Rw ?? 0)).toBe(rise);
        expect((after.STC ?? 0) - (before.STC ?? 0)).toBe(rise);
        expect((after.OITC ?? 0) - (before.OITC ?? 0)).toBe(rise);
        expect(after.C).toBe(before.C);
        expect(after.Ctr50_5000).toBe(before.Ctr50_5000);
      }),
      settings,
    );
  });

  it('no rating falls when one band improves', () => {
    fc.assert(
      fc.property(
        curves,
        fc.nat(THIRD_OCTAVES.length - 1),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (R, i, more) => {
          const better = R.map((value, k) => (k === i ? value + more : value));
          const before = rateThirdOctaves(of(R));
          const after = rateThirdOctaves(of(better));
          expect(after.Rw ?? 0).toBeGreaterThanOrEqual(before.Rw ?? 0);
          expect(after.STC ?? 0).toBeGreaterThanOrEqual(before.STC ?? 0);
          expect(after.OITC ?? 0).toBeGreaterThanOrEqual(before.OITC ?? 0);
        },
      ),
      settings,
    );
  });

  it('the shifted curve lies as high as it may: sum within 32.0 dB, one decibel higher beyond it', () => {
    fc.assert(
      fc.property(curves, (values) => {
        const tenths = values.map((value) => Math.round(10 * value) / 10);
        const contour = contourRw(of(tenths));
        const R = bandValues(of(tenths), contour?.bands ?? []) ?? [];
        const sum = (shift: number): number =>
          R.reduce((total, r, i) => total + Math.max(0, (contour?.values[i] ?? 0) + shift - r), 0);
        expect(sum(0)).toBeLessThanOrEqual(32 + 1e-6);
        expect(sum(1)).toBeGreaterThan(32);
      }),
      settings,
    );
  });
});

describe('incomplete curves', () => {
  const short = { bands: [100, 125, 160], values: [30, 32, 34] };
  it('gives no rating where a band is missing', () => {
    expect(Object.values(rateThirdOctaves(short)).every((rating) => rating === null)).toBe(true);
  });
  it('a curve from 100 Hz has Rw, C and Ctr but no enlarged low range and no OITC', () => {
    const from100 = { bands: THIRD_OCTAVES.slice(6), values: THIRD_OCTAVES.slice(6).map(() => 40) };
    const ratings = rateThirdOctaves(from100);
    expect(ratings.Rw).toBe(40);
    expect(ratings.C100_5000).not.toBeNull();
    expect([ratings.C50_3150, ratings.Ctr50_5000, ratings.OITC]).toEqual([null, null, null]);
  });
});

describe('docstring examples', () => {
  const flat50 = { bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 50) };
  it('octaves are told from third octaves', () => {
    expect(bandWidth([125, 250, 500, 1000, 2000])).toBe('octave');
    expect(bandWidth([100, 125, 160])).toBe('third');
    expect(bandWidth([125, 500, 2000])).toBe('third');
  });
  it('Rw and STC of a flat 50 dB are 50', () => {
    expect(weightedReduction(flat50)).toBe(50);
    expect(soundTransmissionClass(flat50)).toBe(50);
    expect(bandValues({ bands: [100, 125], values: [20, 21] }, [125])).toEqual([21]);
  });
});
