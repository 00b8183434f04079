import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { besselJ1, struveH1 } from '../../../src/engine/openings/cylinderFunctions.ts';
import {
  bringToThirdOctaves,
  holeTransmission,
  holeTransmissions,
  parseCurve,
  slitTransmission,
  slitTransmissions,
  smallElementReduction,
} from '../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES, toReduction } from '../../../src/engine/quantities/index.ts';
import { repeatable } from '../../support/repeatable.ts';

/** Defining integrals, Abramowitz & Stegun 9.1.21 and 12.1.7, by Simpson's rule. */
const integral = (f: (t: number) => number, to: number, steps = 40_000): number => {
  let sum = f(0) + f(to);
  for (let i = 1; i < steps; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f((i * to) / steps);
  return (sum * to) / steps / 3;
};

describe('cylinder functions', () => {
  it.each([0.01, 0.5, 1, 5, 19.9, 20.1, 30, 120])('J1 and H1 equal their defining integrals at x = %f', (x) => {
    const J1 = integral((t) => Math.cos(t - x * Math.sin(t)), Math.PI) / Math.PI;
    const H1 = ((2 * x) / Math.PI) * integral((t) => Math.sin(x * Math.cos(t)) * Math.sin(t) ** 2, Math.PI / 2);
    expect(besselJ1(x)).toBeCloseTo(J1, 8);
    expect(struveH1(x)).toBeCloseTo(H1, 8);
  });
});

describe('laws of openings', () => {
  it('a large hole lets through what falls on it', () => {
    const R = holeTransmissions(1.5, 0.01, [5000, 10000], 'diffuse').map(toReduction);
    expect(Math.max(...R.map(Math.abs))).toBeLessThan(0.15);
  });
  it('a small thin hole passes twice as much of diffuse sound as of plane sound', () => {
    const [normal = 0] = holeTransmissions(0.01, 0.1, [100], 'normal');
    const [diffuse = 0] = holeTransmissions(0.01, 0.1, [100], 'diffuse');
    expect(diffuse / normal).toBeCloseTo(2, 3);
  });
  it('a slit along an edge passes more at low frequencies than one in the middle', () => {
    const [edge = 0] = slitTransmissions(0.005, 0.05, true, [100], 'diffuse');
    const [middle = 0] = slitTransmissions(0.005, 0.05, false, [100], 'diffuse');
    expect(edge / middle).toBeGreaterThan(1.5);
    expect(edge / middle).toBeLessThanOrEqual(4);
  });
  it('transmission is finite and above nothing for any size the document allows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0005, max: 2, noNaN: true }),
        fc.double({ min: 0.001, max: 3, noNaN: true }),
        (size, depth) => {
          const all = [
            ...holeTransmissions(size, depth, THIRD_OCTAVES, 'diffuse'),
            ...slitTransmissions(size / 2, depth, true, THIRD_OCTAVES, 'diffuse'),
          ];
          expect(all.every((tau) => Number.isFinite(tau) && tau > 0)).toBe(true);
        },
      ),
      repeatable(65, 60),
    );
  });
  it('refuses a size that is no size in the house wording', () => {
    expect(() => holeTransmissions(0, 0.1, [100], 'diffuse')).toThrow('diameter of the hole must be > 0 m, got 0');
    expect(() => slitTransmissions(-0.01, 0.1, false, [100], 'diffuse')).toThrow('width of the slit must be > 0 m');
  });
});

describe('a measured curve brought to 25 Hz to 10 kHz', () => {
  const from100 = { bands: THIRD_OCTAVES.slice(6, 22), values: THIRD_OCTAVES.slice(6, 22).map((_, i) => 30 + i) };
  it('keeps what was measured and carries the bass down by 6 dB per octave', () => {
    const { values, extrapolated } = bringToThirdOctaves(from100);
    expect(values.slice(6, 22)).toEqual(from100.values);
    expect(values[3]).toBe(24);
    expect(values[0]).toBe(18);
    expect(values.at(-1)).toBe(45);
    expect(extrapolated[3]).toContain('carried down from 100 Hz');
    expect(extrapolated[6]).toBeNull();
    expect(extrapolated.at(-1)).toContain('held at the value of 3150 Hz');
  });
  it('never carries a panel below 0 dB', () => {
    const { values } = bringToThirdOctaves({ bands: [100, 125, 160], values: [5, 7, 9] });
    expect(Math.min(...values)).toBe(0);
  });
  it('spreads octaves over their three thirds', () => {
    const { values, extrapolated } = bringToThirdOctaves({ bands: [125, 250, 500], values: [20, 30, 40] });
    expect(values.slice(6, 15)).toEqual([20, 20, 20, 30, 30, 30, 40, 40, 40]);
    expect(extrapolated.slice(6, 15).every((reason) => reason === null)).toBe(true);
  });
  it('bridges a gap and says so', () => {
    const { values, extrapolated } = bringToThirdOctaves({ bands: [100, 125, 200], values: [20, 22, 30] });
    expect(values[8]).toBe(26);
    expect(extrapolated[8]).toContain('between its neighbours');
  });
  it('refuses bands out of order, missing values and values that are no numbers', () => {
    expect(() => bringToThirdOctaves({ bands: [125, 100], values: [20, 20] })).toThrow(
      'must ascend, got 100 Hz after 125',
    );
    expect(() => bringToThirdOctaves({ bands: [100, 125], values: [20] })).toThrow('one value per band');
    expect(() => bringToThirdOctaves({ bands: [100], values: [Number.NaN] })).toThrow(
      'at 100 Hz must be a finite number',
    );
    expect(() => bringToThirdOctaves({ bands: [], values: [] })).toThrow('at least 1 band');
  });
});

describe('a table of two columns', () => {
  const curve = { bands: [31.5, 100, 1000], values: [12.5, 20.5, 30] };
  it.each([
    ['comma', '31.5,12.5\n100,20.5\n1000,30'],
    ['semicolon and decimal comma', '31,5;12,5\n100;20,5\n1000;30'],
    ['tab and heading', 'Band\tR\n31,5\t12,5\n100\t20,5\n1000\t30\n'],
    ['blanks, Windows line ends, units', '# lab\r\n31.5Hz 12.5\r\n1k 30\r\n\r\n100 20.5dB\r\n'],
    ['quotes and byte order mark', '\uFEFF"f (Hz)","R (dB)"\n"31.5","12.5"\n"100","20.5"\n"1000","30"'],
  ])('is read: %s', (_, text) => {
    expect(parseCurve(text)).toEqual({ ok: true, curve });
  });
  it.each([
    ['100,20,5', 'Line 1 has 3 columns ("100,20,5")'],
    ['100;20\n110;21', 'Line 2: the band "110"'],
    ['100;20\n125;loud', 'Line 2: the value "loud" must be a number from -40 to 150 dB.'],
    ['100;20\n125;900', 'Line 2: the value "900"'],
    ['100;20\n100;21', 'Line 2: the band 100 Hz stands already in line 1'],
    ['', 'The table holds no values'],
    ['band;R', 'The table holds no values'],
  ])('%j is refused with a sentence', (text, sentence) => {
    const parsed = parseCurve(text);
    expect(parsed.ok).toBe(false);
    expect(parsed.ok ? '' : parsed.faults.join(' ')).toContain(sentence);
  });
  it('names every faulty line at once', () => {
    const parsed = parseCurve('100;20\n90;1\n125;x');
    expect(parsed.ok ? [] : parsed.faults).toHaveLength(2);
  });
});

describe('docstring examples', () => {
  it('hold', () => {
    expect(besselJ1(1)).toBeCloseTo(0.44005, 5);
    expect(struveH1(1)).toBeCloseTo(0.19846, 5);
    expect(holeTransmission(100, 0.05, 0.2)).toBeCloseTo(0.0667, 3);
    expect(slitTransmission(500, 0.005, 0.1, 'normal', false)).toBeCloseTo(0.12, 3);
    expect(bringToThirdOctaves({ bands: [100, 125], values: [20, 22] }).values[5]).toBe(18);
    expect(smallElementReduction(38, 11.3)).toBeCloseTo(38.53, 2);
    expect(parseCurve('100;20,5\n125;22').ok).toBe(true);
  });
});
