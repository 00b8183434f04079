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
  const compare = (tau: readonly number[], printed: readonly number[]): void => {
    const differences = printed.map((R, i) => Math.abs(toReduction(tau[i] ?? Number.NaN) - R));
    expect(differences).toHaveLength(28);
    expect(Math.max(...differences)).toBeLessThan(0.1);
  };
  it('has three holes and a slit to compare', () => {
    expect([...golden.holes, ...golden.slits].map(({ id }) => id)).toEqual([
      'hole-01',
      'hole-02',
      'hole-03',
      'slit-02',
    ]);
  });
  it.each(golden.holes)('$id, normal and diffuse incidence', ({ a, d, R_normal, R_diffuse }) => {
    compare(holeTransmissions(2 * a, d, golden.bands, 'normal'), R_normal);
    compare(holeTransmissions(2 * a, d, golden.bands, 'diffuse'), R_diffuse);
  });
  it.each(golden.slits)('$id, normal and diffuse incidence', ({ w, d, edge, R_normal, R_diffuse }) => {
    compare(slitTransmissions(w, d, edge, golden.bands, 'normal'), R_normal);
    compare(slitTransmissions(w, d, edge, golden.bands, 'diffuse'), R_diffuse);
  });
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
      if (!Array.isArray(dip)) throw new Error('a dip is a frequency and a level');
      const [frequency = Number.NaN, R = Number.NaN] = dip.map(Number);
      const around = Array.from({ length: 81 }, (_, i) => frequency - 40 + i);
      const values = around.map((f) => toReduction(holeTransmission(f, 0.01, 0.1)));
      const least = Math.min(...values);
      expect(Math.abs((around[values.indexOf(least)] ?? 0) - frequency)).toBeLessThanOrEqual(3);
      expect(Math.abs(least - R)).toBeLessThan(0.15);
    }
  });
  it('bands of an open aperture fall to about -5 to -10 dB (Vigran, Building Acoustics 2008, 9.2.1, published)', () => {
    const printed: unknown = check('aperture-dip-range').expected;
    const [high = Number.NaN, low = Number.NaN] = Array.isArray(printed) ? printed.map(Number) : [];
    for (const one of golden.holes) {
      const tau = holeTransmissions(2 * one.a, one.d, THIRD_OCTAVES, 'normal');
      const least = toReduction(Math.max(...tau));
      expect(least).toBeLessThan(high);
      expect(least).toBeGreaterThan(low);
    }
  });
});
