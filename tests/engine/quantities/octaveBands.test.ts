import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { octaveReduction, octaveShare, THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import { repeatable } from '../../support/repeatable.ts';

describe('octaves from third octaves', () => {
  it('keep a flat curve flat', () => {
    expect(octaveReduction([50, 63, 80], [20, 20, 20], 63)).toBeCloseTo(20, 9);
  });

  it('follow the weakest third: 20, 30 and 40 dB are 24.3 dB together', () => {
    // 10 lg(3 / (0.01 + 0.001 + 0.0001))
    expect(octaveReduction([100, 125, 160], [20, 30, 40], 125)).toBeCloseTo(24.318, 3);
  });

  it('are missing where a third is missing', () => {
    expect(octaveReduction([100, 125], [20, 30], 125)).toBeNull();
  });

  it('share out an octave by the energy in its thirds', () => {
    expect(octaveShare([50, 63, 80], [20, 20, 20], [0.1, 0.2, 0.3], 63)).toBeCloseTo(0.2, 9);
    // ten times the energy in the lowest third: (10·0.1 + 0.2 + 0.3) / 12
    expect(octaveShare([50, 63, 80], [10, 20, 20], [0.1, 0.2, 0.3], 63)).toBeCloseTo(0.125, 9);
  });

  it('share out the whole: the shares of all parts add up to one', () => {
    const level = fc.double({ min: 0, max: 80, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const n = THIRD_OCTAVES.length;
    fc.assert(
      fc.property(
        fc.array(level, { minLength: n, maxLength: n }),
        fc.array(share, { minLength: n, maxLength: n }),
        (R, a) => {
          const b = a.map((it) => 1 - it);
          expect(octaveShare(THIRD_OCTAVES, R, a, 250) + octaveShare(THIRD_OCTAVES, R, b, 250)).toBeCloseTo(1, 9);
        },
      ),
      repeatable(10),
    );
  });
});
