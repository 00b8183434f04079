import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import type { FlankingElement, Part, Predictor } from '../../../src/engine/shell/index.ts';
import {
  apparentReduction,
  evaluateShell,
  flankingReduction,
  junctionCurve,
  partTransmission,
  vibrationReduction,
} from '../../../src/engine/shell/index.ts';
import { planOf, shellNotes } from '../../../src/engine/plan/index.ts';
import type { Assembly } from '../../../src/engine/assembly/index.ts';
import { predictAssembly } from '../../../src/engine/transmission/index.ts';
import { BLOCK, sheet, TOPPING } from '../../support/layups.ts';
import { repeatable } from '../../support/repeatable.ts';
import { build, level, part } from './builds.ts';

const settings = repeatable(12354, 60);
const slab = { name: 'slab', layers: [sheet(TOPPING, 200)] };
const wall = { name: 'wall', layers: [sheet(BLOCK, 140)] };
const lined = {
  name: 'wall with a board on a frame of its own',
  layers: [sheet(TOPPING, 20), { kind: 'cavity' as const, depth: 0.1 }, sheet(BLOCK, 140)],
};
const predict: Predictor = (assembly) => predictAssembly(assembly, { resolution: 'draft' });

const path: FlankingElement = {
  kind: 'flanking',
  junction: 'rigid-t',
  run: 'straight',
  length: 4,
  inside: { part: 'floor', name: 'floor', make: { kind: 'assembly', assembly: slab }, area: 20, lining: null },
  beyond: { part: null, name: 'slab', make: { kind: 'assembly', assembly: slab }, area: 15, lining: null },
  crossing: { part: 'wall', make: { kind: 'assembly', assembly: wall } },
  vibrationReduction: null,
};
const round = (element: FlankingElement): Part => ({ ...part('round', 10, level(0)), kind: 'flanking', element });
const transmit = (one: Part) => partTransmission(one, predict);
const passes = (element: FlankingElement) => transmit(round(element)).openArea;

describe('laws of flanking paths', () => {
  it('R of a path is the same from either end', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 80, noNaN: true }),
        fc.double({ min: 20, max: 80, noNaN: true }),
        (a, b) => {
          const [one, other] = [
            flankingReduction({ first: a, second: b, junction: 6, length: 3 }, 10),
            flankingReduction({ first: b, second: a, junction: 6, length: 3 }, 10),
          ];
          expect(one).toBeCloseTo(other, 9);
        },
      ),
      settings,
    );
  });
  it('twice the length lets twice as much through; ten times the mass ratio both ways gives one corner', () => {
    const [short, long] = [passes(path), passes({ ...path, length: 8 })];
    short.forEach((passed, b) => expect((long[b] ?? 0) / passed).toBeCloseTo(2, 6));
    expect(vibrationReduction('rigid-t', 'corner', 100, 250, 500)).toBeCloseTo(
      vibrationReduction('rigid-t', 'corner', 250, 100, 500),
      9,
    );
  });
  it('an elastic joint never lets more through, and helps twice on the way straight on', () => {
    const [rigid, soft] = [passes(path), passes({ ...path, junction: 'flexible-t' })];
    rigid.forEach((passed, b) => expect(soft[b]).toBeLessThanOrEqual(passed * (1 + 1e-9)));
    const at = (run: 'straight' | 'corner') =>
      vibrationReduction('flexible-t', run, 200, 200, 1250) - vibrationReduction('rigid-t', run, 200, 200, 1250);
    expect(at('straight')).toBeCloseTo(20, 9);
    expect(at('corner')).toBeCloseTo(10, 9);
  });
  it('a floating floor takes 30 lg(f/f0) off, and nothing below its resonance', () => {
    const floating = { ...path, inside: { ...path.inside, lining: { surfaceMass: 73.5, stiffness: 8 } } };
    const [bare, better] = [passes(path), passes(floating)];
    const gain = (band: number) => {
      const b = THIRD_OCTAVES.indexOf(band);
      return 10 * Math.log10((bare[b] ?? 0) / (better[b] ?? 1));
    };
    expect(gain(40)).toBeCloseTo(0, 9);
    expect(gain(500)).toBeCloseTo(29.3, 1);
  });
  it("R' is never above the best of its ways and never below the sum of the same", () => {
    const ways = fc.array(fc.double({ min: 10, max: 90, noNaN: true }), { minLength: 1, maxLength: 13 });
    fc.assert(
      fc.property(ways, (all) => {
        const R = apparentReduction(all);
        expect(R).toBeLessThanOrEqual(Math.min(...all) + 1e-9);
        expect(R).toBeGreaterThanOrEqual(Math.min(...all) - 10 * Math.log10(all.length) - 1e-9);
      }),
      settings,
    );
  });
  it('K is not below what areas and length allow', () => {
    const small = { ...path, length: 50, inside: { ...path.inside, area: 2 }, beyond: { ...path.beyond, area: 2 } };
    const least = 10 * Math.log10(50 * (1 / 2 + 1 / 2));
    junctionCurve(small).forEach((K) => expect(K).toBeCloseTo(least, 9));
  });
});

describe('flanking paths as parts of the shell', () => {
  const shell = (parts: readonly Part[]) => evaluateShell(build(parts), transmit);
  const floor = part('floor', 20, { kind: 'assembly', assembly: slab });
  it('add to what gets out, carry a share and can limit, without adding area', () => {
    const before = shell([part('wall', 10, level(80)), part('floor', 20, level(80))]);
    const after = shell([part('wall', 10, level(80)), part('floor', 20, level(80)), round(path)]);
    expect(after.area).toBe(before.area);
    after.R.forEach((R, b) => expect(R).toBeLessThan((before.R[b] ?? 0) + 1e-9));
    expect(after.limiting).toBe('round');
    expect(after.parts.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 9);
    const [note] = shellNotes(build([...after.parts.map(({ id }) => part(id, 1, level(0)))]), after);
    expect(note?.code).toBe('part-caps-whole');
    expect(note?.sentence).toContain('goes round the parts by "round"');
    const first = after.parts.find(({ id }) => id === 'round');
    expect(first?.area).toBe(10);
    expect(first?.ifPerfect.R[15]).toBeCloseTo(before.R[15] ?? NaN, 6);
  });
  it('of a lined wall the heavy leaf carries, and its lining counts once and whole', () => {
    const along = (assembly: Assembly) => {
      const inside = { ...path.inside, part: 'wall', make: { kind: 'assembly' as const, assembly } };
      return passes({ ...path, inside, run: 'corner' as const });
    };
    const [bare, behind] = [along(wall), along(lined)];
    const b = THIRD_OCTAVES.indexOf(1000);
    const gain = (predict(lined, null).R[b] ?? 0) - (predict(wall, null).R[b] ?? 0);
    expect(gain).toBeGreaterThan(5);
    expect(10 * Math.log10((bare[b] ?? 0) / (behind[b] ?? 1))).toBeCloseTo(Math.min(35, gain), 6);
  });
  it('follow a swap of the part they run along', () => {
    const candidate = {
      id: 'lined',
      name: 'Lined',
      element: {
        kind: 'assembly' as const,
        assembly: { ...lined, layers: [...lined.layers.slice(0, 2), sheet(TOPPING, 200)] },
      },
      price: { materials: null, labour: null, illustrative: false },
    };
    const parts = [part('wall', 10, level(90)), { ...floor, candidates: [candidate] }];
    const gain = (all: readonly Part[]) => planOf(build(all), transmit).rungs[0]?.energyGain ?? NaN;
    const following = gain([...parts, round(path)]);
    const apart = gain([...parts, round({ ...path, inside: { ...path.inside, part: null } })]);
    expect(following).toBeGreaterThan(apart + 1);
  });
  it('refuse a junction of unknown mass', () => {
    const curve = { bands: THIRD_OCTAVES, values: THIRD_OCTAVES.map(() => 50) };
    const unknown: FlankingElement = { ...path, inside: { ...path.inside, make: { kind: 'measured', curve } } };
    expect(() => passes(unknown)).toThrow('mass of both elements');
    expect(passes({ ...unknown, vibrationReduction: 6 })[15]).toBeGreaterThan(0);
  });
});
