import { describe, expect, test } from 'vitest';
import { massAirMassResonance } from '../../../src/engine/assembly/index.ts';
import type { Assembly, Frame } from '../../../src/engine/assembly/index.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import { createPredictor } from '../../../src/engine/transmission/index.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';
import { BLOCK, GYPSUM, cavity, frame, layup, sheet } from '../../support/layups.ts';
import { assemblyOf, measuredCases } from '../tl/measuredCases.ts';
import checks from './checks.json' with { type: 'json' };

const predictor = createPredictor();
const predict = (assembly: Assembly): Prediction => predictor.predict(assembly, { resolution: 'draft' });
const Rw = (assembly: Assembly): number => predict(assembly).ratings.Rw ?? NaN;

const HOLLOW = { ...BLOCK, density: 1237, youngsModulus: 7.4e9 };
const WALLS = [sheet(BLOCK, 100), sheet(BLOCK, 190), sheet(HOLLOW, 190)];
const BARS = frame({ stud: 'none', fixing: 'resilient-bar', spacing: 0.6, barSpacing: 0.6 });

/** Lining of so many 12.5 mm boards on a gap. @param depth mm */
const lined = (wall: (typeof WALLS)[number], depth: number, wool: number, boards = 1, fixing?: Frame): Assembly =>
  layup(...Array.from({ length: boards }, () => sheet(GYPSUM, 12.5)), cavity(depth, wool, fixing), wall);

/** Resonance with the stiffness that table D.1 goes with: 0.111/d MN/m³ where wool fills the gap. */
const filledResonance = (wall: (typeof WALLS)[number], depth: number, boards: number): number => {
  const masses = [wall.material.density * wall.thickness, boards * GYPSUM.density * 0.0125];
  return 160 * Math.sqrt((111 / depth) * masses.reduce((sum, mass) => sum + 1 / mass, 0));
};
/** Nominal third octave that a frequency falls into, Hz. */
const third = (frequency: number): number => {
  const place = Math.round(10 * Math.log10(frequency));
  return THIRD_OCTAVES.find((band) => Math.round(10 * Math.log10(band)) === place) ?? NaN;
};

describe('resonances of linings', () => {
  test.each(checks.resonances)('$gap_mm mm and $lining_kg_m2 kg/m²: $printed_Hz Hz as printed', (it) => {
    const f0 = massAirMassResonance(it.wall_kg_m2, it.lining_kg_m2, it.gap_mm / 1000);
    expect(Math.abs(f0 / it.printed_Hz - 1)).toBeLessThan(0.01);
  });
});

describe('a lining on one face', () => {
  const filled = WALLS.flatMap((wall) =>
    [
      [20, 1],
      [25, 1],
      [40, 1],
      [50, 2],
      [75, 2],
      [100, 2],
    ].flatMap(([depth = NaN, boards = NaN]) => {
      const f0 = third(filledResonance(wall, depth, boards));
      const bare = Rw(layup(wall));
      const table = checks.lowBranch.constant_dB - 20 * Math.log10(f0) - bare / 2;
      return [undefined, BARS].map((fixing) => ({
        f0,
        off: Rw(lined(wall, depth, depth, boards, fixing)) - bare - table,
      }));
    }),
  );

  test('with wool gains what table D.1 says: 2 dB more in the mean, no case 7 dB away', () => {
    for (const { f0, off } of filled) {
      expect(f0).toBeGreaterThanOrEqual(checks.lowBranch.from_Hz);
      expect(f0).toBeLessThanOrEqual(checks.lowBranch.to_Hz);
      expect(Math.abs(off)).toBeLessThan(7);
    }
    const mean = filled.reduce((sum, { off }) => sum + off, 0) / filled.length;
    expect(mean).toBeGreaterThan(-1);
    expect(mean).toBeLessThan(3);
  });

  test.each(checks.tableD1)('with a resonance near $resonance_Hz Hz costs $improvement_dB dB, within 2 dB', (row) => {
    for (const wall of WALLS) {
      const mass = wall.material.density * wall.thickness;
      const gap = [5, 6, 7, 8, 9, 10, 11, 12, 13].find(
        (depth) => third(massAirMassResonance(mass, GYPSUM.density * 0.0125, depth / 1000)) === row.resonance_Hz,
      );
      const change = Rw(lined(wall, gap ?? NaN, 0)) - Rw(layup(wall));
      expect(change).toBeLessThan(0);
      expect(Math.abs(change - row.improvement_dB)).toBeLessThanOrEqual(2);
    }
  });
});

describe('boards on 13 mm bars on both faces of a block wall', () => {
  const find = (id: string): Assembly => {
    const found = measuredCases().find((it) => it.id === id);
    if (!found) throw new Error(`no case ${id}`);
    return assemblyOf(found);
  };
  const bare = predict(find(checks.bothFaces.bare));
  const both = predict(find(checks.bothFaces.lined));
  const change = (band: number): number =>
    (both.R[both.bands.indexOf(band)] ?? NaN) - (bare.R[bare.bands.indexOf(band)] ?? NaN);

  test('rate lower than the bare wall, as published', () => {
    const step = (both.ratings.STC ?? NaN) - (bare.ratings.STC ?? NaN);
    expect(checks.bothFaces.published_step_dB).toBeLessThan(0);
    expect(step).toBeLessThanOrEqual(-1);
    expect(step).toBeGreaterThanOrEqual(2 * checks.bothFaces.published_step_dB);
    expect((both.ratings.Rw ?? NaN) - (bare.ratings.Rw ?? NaN)).toBeLessThanOrEqual(-1);
  });

  test('lose 5 dB and more round 160 to 315 Hz and gain above 800 Hz', () => {
    const losses = [160, 200, 250, 315].map(change);
    expect(Math.min(...losses)).toBeLessThan(-5);
    expect(losses.reduce((sum, loss) => sum + loss, 0) / 4).toBeLessThan(-3);
    expect(change(1000)).toBeGreaterThan(5);
  });
});
