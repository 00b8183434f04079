import { describe, expect, it } from 'vitest';
import { smallElementReduction } from '../../../src/engine/openings/index.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import { rateCurve } from '../../../src/engine/ratings/index.ts';
import type { PartElement } from '../../../src/engine/shell/index.ts';
import { compositeReduction, equalEnergyReduction } from '../../../src/engine/shell/index.ts';
import { level, part, shellOf } from '../../engine/shell/builds.ts';
import cases from './cases.json' with { type: 'json' };

const values = (id: string) => {
  const found = cases.find((one) => one.id === id);
  if (found === undefined) throw new Error(`reference case ${id} is missing`);
  const given: Record<string, unknown> = { ...found.inputs, ...found.expected };
  const value = (key: string): number => {
    if (typeof given[key] !== 'number') throw new Error(`${id} lacks ${key}`);
    return given[key];
  };
  const list = (key: string): number[] => {
    const many = given[key];
    if (!Array.isArray(many)) throw new Error(`${id} lacks the list ${key}`);
    return many.map(Number);
  };
  const sized = (key: string): { area: number; R: number[] } => {
    const pair = given[key];
    if (!Array.isArray(pair) || !Array.isArray(pair[1])) throw new Error(`${id} lacks the part ${key}`);
    return { area: Number(pair[0]), R: pair[1].map(Number) };
  };
  return { value, list, sized };
};

describe('published composites', () => {
  it('brick wall with a window at 1 kHz: 44.8 dB (Crocker & Arenas 2021, Example 12.13, published)', () => {
    const { value } = values('crocker-12-13');
    const whole = compositeReduction([
      { area: value('S_brick'), R: value('TL_brick') },
      { area: value('S_glass'), R: value('TL_glass') },
    ]);
    expect(Math.abs(whole - value('TL_total'))).toBeLessThan(0.1);
  });
  it('a small element of Dn,e 38 dB counts as 38.5 dB of the facade (ISO 10140-2 / EN 12354-3, from memory)', () => {
    const { value } = values('dne-small-element');
    expect(Math.abs(smallElementReduction(value('Dne'), value('S_m2')) - value('R_equivalent'))).toBeLessThan(0.005);
  });

  const facade = values('en12354-3-annexF');
  const octaves = facade.list('bands_hz');
  const element = (quantity: 'R' | 'Dne', R: readonly number[]): PartElement => ({
    kind: 'measured',
    quantity,
    curve: { bands: octaves, values: R },
  });
  const shell = () => {
    const [wall, large, small] = [facade.sized('wall'), facade.sized('window_a'), facade.sized('window_b')];
    const inlet = facade.value('S') - wall.area - large.area - small.area;
    return shellOf([
      part('wall', wall.area, element('R', wall.R)),
      part('large window', large.area, element('R', large.R), 'window'),
      part('small window', small.area, element('R', small.R), 'window'),
      part('air inlet', inlet, element('Dne', facade.list('inlet_Dne')), 'vent'),
    ]);
  };
  const atOctaves = (R: readonly number[]) => octaves.map((band) => R[THIRD_OCTAVES.indexOf(band)] ?? Number.NaN);

  it('facade with an air inlet, octave by octave (EN 12354-3:2000 Annex F; 1 and 2 kHz as recomputed)', () => {
    const recomputed = facade.list('Rprime').map((R, i) => [R, R, R, 35.8, 37.98][i] ?? R);
    atOctaves(shell().R).forEach((R, i) => {
      expect(Math.abs(R - (recomputed[i] ?? Number.NaN))).toBeLessThan(0.05);
    });
  });
  it('the same facade rated by octaves: 31 with Ctr -3 (EN 12354-3:2000 Annex F, published)', () => {
    const ratings = rateCurve({ bands: octaves, values: atOctaves(shell().R) });
    expect([ratings.Rw, ratings.Ctr]).toEqual([facade.value('Rtrs_w'), facade.value('Ctr')]);
  });
  it('the inlet lets through most of the 250 Hz octave', () => {
    const inlet = shell().parts.find(({ id }) => id === 'air inlet');
    expect(inlet?.shareByBand[THIRD_OCTAVES.indexOf(250)] ?? 0).toBeGreaterThan(0.6);
  });
});

describe('rules of the trade, closed forms', () => {
  it('an open area of 0.1, 0.5, 1, 2, 5, 10 % caps a tight wall at 30, 23, 20, 17, 13, 10 dB', () => {
    const { list } = values('rule-open-area');
    list('open_share').forEach((open, i) => {
      const whole = compositeReduction([
        { area: 1 - open, R: 70 },
        { area: open, R: 0 },
      ]);
      expect(Math.abs(whole - (list('R')[i] ?? Number.NaN))).toBeLessThan(0.5);
    });
  });
  it('a 2 m² part in 70 m² of 55 dB may be 39.7 dB for equal energy, and the whole is then 3 dB below the wall', () => {
    const { value } = values('rule-equal-energy');
    const wall = value('S_whole') - value('S_part');
    const needed = equalEnergyReduction(value('R_wall'), wall, value('S_part'));
    expect(Math.abs(needed - value('R_part'))).toBeLessThan(0.2);
    const shell = shellOf([part('wall', wall, level(value('R_wall'))), part('door', value('S_part'), level(needed))]);
    expect(Math.abs(value('R_wall') - (shell.R[15] ?? 0) - value('loss'))).toBeLessThan(0.2);
    expect(shell.parts[0]?.share).toBeCloseTo(0.5, 6);
  });
  it('a 2 m² door of 30 dB in 70 m² of 55 dB leaves 45 dB', () => {
    const { value } = values('rule-door');
    const whole = compositeReduction([
      { area: value('S_whole') - value('S_door'), R: value('R_wall') },
      { area: value('S_door'), R: value('R_door') },
    ]);
    expect(Math.abs(whole - value('R'))).toBeLessThan(0.2);
  });
  it('a bare 100 mm hole in 10 m² of 55 dB leaves 31 dB where it passes what falls on it (closed form, high notes)', () => {
    const hole = part('hole', 0.00785, { kind: 'hole', diameter: 0.1, depth: 0.1 }, 'hole');
    const { R } = shellOf([part('wall', 10 - 0.00785, level(55)), hole]);
    expect(Math.abs((R.at(-1) ?? 0) - 31)).toBeLessThan(0.2);
  });
  it('a window of 32 dB in 10 m² of 55 dB: 44.6, 41.8, 38.9, 35.9 dB for 0.5, 1, 2, 4 m²', () => {
    const { value, list } = values('rule-window');
    list('S_window').forEach((area, i) => {
      const whole = compositeReduction([
        { area: value('S_whole') - area, R: value('R_wall') },
        { area, R: value('R_window') },
      ]);
      expect(Math.abs(whole - (list('R')[i] ?? Number.NaN))).toBeLessThan(0.06);
    });
  });
});
