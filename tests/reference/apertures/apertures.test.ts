import { describe, expect, it } from 'vitest';
import {
  holeTransmission,
  holeTransmissions,
  slitTransmission,
  slitTransmissions,
} from '../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES, toReduction } from '../../../src/engine/quantities/index.ts';
import checks from './checks.json' with { type: 'json' };
import golden from './golden.json' with { type: 'json' };

const check = (id: string) => {
  const found = checks.find((one) => one.id === id);
  if (found === undefined) throw new Error(`reference case ${id} is missing`);
  return found;
};

describe('apertures against an independent implementation of the published formulas, within 0.1 dB', () => {
  it('has holes and a slit to compare', () => {
    expect(golden.cases.map((one) => one.id)).toEqual(['hole-01', 'hole-02', 'hole-03', 'slit-02']);
  });
  for (const one of golden.cases) {
    for (const incidence of ['normal', 'diffuse'] as const) {
      it(`${one.id} (${one.title}), ${incidence} incidence`, () => {
        const computed =
          'w' in one && one.w !== undefined
            ? slitTransmissions(one.w, one.d, one.edge, golden.bands, incidence)
            : holeTransmissions(2 * (one.a ?? Number.NaN), one.d, golden.bands, incidence);
        const printed = incidence === 'normal' ? one.R_normal : one.R_diffuse;
        const differences = printed.map((R, i) => Math.abs(toReduction(computed[i] ?? Number.NaN) - R));
        expect(differences).toHaveLength(28);
        expect(Math.max(...differences)).toBeLessThan(0.1);
      });
    }
  }
});

describe('single values', () => {
  it('slit of 5 mm through 100 mm in the middle of a wall, normal incidence (Gomperts & Kihlman 1967, from memory)', () => {
    const printed: Record<string, unknown> = { ...check('slit-5-100').expected };
    const bands = THIRD_OCTAVES.filter((band) => `${band}` in printed);
    const R = bands.map((f) => toReduction(slitTransmission(f, 0.005, 0.1, 'normal', false)));
    expect(bands).toHaveLength(21);
    const differences = bands.map((band, i) => Math.abs(Number(printed[`${band}`]) - (R[i] ?? Number.NaN)));
    expect(Math.max(...differences)).toBeLessThan(0.11);
  });
  it('a 20 mm hole through 100 mm has its three dips where an independent recomputation has them', () => {
    const dips: unknown = check('hole-10-100-dips').expected;
    if (!Array.isArray(dips)) throw new Error('dips missing');
    for (const dip of dips) {
      const [frequency, R] = [Number(dip[0]), Number(dip[1])];
      const around = Array.from({ length: 81 }, (_, i) => frequency - 40 + i);
      const values = around.map((f) => toReduction(holeTransmission(f, 0.01, 0.1)));
      const least = Math.min(...values);
      expect(Math.abs((around[values.indexOf(least)] ?? 0) - frequency)).toBeLessThanOrEqual(3);
      expect(Math.abs(least - R)).toBeLessThan(0.15);
    }
  });
  it('bands of an open aperture fall to about -5 to -10 dB (Vigran, Building Acoustics 2008, 9.2.1, published)', () => {
    for (const one of golden.cases.filter(({ id }) => id.startsWith('hole'))) {
      const tau = holeTransmissions(2 * (one.a ?? Number.NaN), one.d, THIRD_OCTAVES, 'normal');
      const least = toReduction(Math.max(...tau));
      expect(least).toBeLessThan(-5);
      expect(least).toBeGreaterThan(-10);
    }
  });
});
