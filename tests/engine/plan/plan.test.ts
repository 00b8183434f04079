import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planOf } from '../../../src/engine/plan/index.ts';
import type { Candidate, Option, Part, PartPrice } from '../../../src/engine/shell/index.ts';
import { partTransmission } from '../../../src/engine/shell/index.ts';
import { repeatable } from '../../support/repeatable.ts';
import { bassHeavy, curve, flat, level, noAssemblies, part, shellOf, trebleHeavy } from '../shell/builds.ts';

const unpriced: PartPrice = { materials: null, labour: null, illustrative: false };
const candidate = (id: string, R: number, price: PartPrice = unpriced): Candidate => ({
  id,
  name: id,
  element: level(R),
  price,
});
const plan = (parts: readonly Part[], options: readonly Option[] = [], source = flat) =>
  planOf({ parts, options, source }, (one) => partTransmission(one, noAssemblies));

const wall: Part = {
  ...part('wall', 40, level(55)),
  candidates: [candidate('second board', 60, { materials: 400, labour: null, illustrative: true })],
};
const door: Part = {
  ...part('door', 2, level(30), 'door'),
  candidates: [
    candidate('heavy door', 43, { materials: 500, labour: 100, illustrative: false }),
    candidate('two doors', 50),
  ],
};

describe('the ladder', () => {
  it('ranks single swaps by what they take off the energy that gets out', () => {
    const { rungs } = plan([wall, door]);
    expect(rungs.map((rung) => rung.candidate)).toEqual(['two doors', 'heavy door', 'second board']);
    expect(rungs[2]?.energyGain).toBeCloseTo(0.18, 2);
  });
  it('tells what limits next', () => {
    const { rungs } = plan([wall, door]);
    const best = rungs[0];
    expect(best?.nextLimiting).toBe('wall');
    expect(best?.nextLimitingShare).toBeCloseTo(0.864, 2);
  });
  it('cost is the candidate’s materials and labour; own work counts nothing; no price stays open', () => {
    const { rungs } = plan([wall, door]);
    const costs = Object.fromEntries(rungs.map(({ candidate: id, cost }) => [id, cost]));
    expect(costs).toEqual({ 'two doors': null, 'heavy door': 600, 'second board': 400 });
    const heavy = rungs.find((rung) => rung.candidate === 'heavy door');
    expect(heavy?.gainPerCost).toBeCloseTo((heavy?.energyGain ?? 0) / 600, 12);
    expect(rungs.find((rung) => rung.candidate === 'second board')?.illustrative).toBe(true);
    expect(rungs[0]?.gainPerCost).toBeNull();
  });
  it('gains agree with the shell evaluated after the swap', () => {
    const before = shellOf([wall, door]);
    const after = shellOf([wall, { ...door, element: level(43) }]);
    const heavy = plan([wall, door]).rungs.find((rung) => rung.candidate === 'heavy door');
    expect(heavy?.RwGain).toBe((after.ratings.Rw ?? 0) - (before.ratings.Rw ?? 0));
    expect(heavy?.bassGain).toBeCloseTo(after.bassR - before.bassR, 9);
  });
  it('ranks by the chosen source', () => {
    const boomy = [...Array<number>(6).fill(15), ...Array<number>(21).fill(60)];
    const roof: Part = { ...part('roof', 20, curve(boomy), 'roof'), candidates: [candidate('heavier', 60)] };
    const leaky: Part = {
      ...part('vent', 1, curve([...Array<number>(6).fill(60), ...Array<number>(21).fill(20)]), 'vent'),
      candidates: [candidate('lined box', 60)],
    };
    expect(plan([roof, leaky], [], bassHeavy).rungs[0]?.part).toBe('roof');
    expect(plan([roof, leaky], [], trebleHeavy).rungs[0]?.part).toBe('vent');
  });
});

describe('the next step', () => {
  const priced = (materials: number): PartPrice => ({ materials, labour: null, illustrative: false });
  const leaky = (candidates: readonly Candidate[]): Part => ({ ...part('door', 2, level(30), 'door'), candidates });
  const next = (candidates: readonly Candidate[]) => plan([part('wall', 40, level(55)), leaky(candidates)]).next;

  it('buys most for its money of the changes that gain about 1 dB or more, not the largest gain', () => {
    const dear = candidate('new door', 50, priced(2000));
    const cheap = candidate('seal', 36, priced(40));
    expect(next([dear, cheap])).toEqual({ part: 'door', candidate: 'seal', reason: 'money' });
  });
  it('does not fall for a cheap change that nobody hears', () => {
    const trifle = candidate('paint', 30.3, priced(1));
    expect(next([trifle, candidate('new door', 50, priced(2000))])?.candidate).toBe('new door');
  });
  it('takes the largest gain, and says so, without prices or without a change that gains 1 dB', () => {
    expect(next([candidate('seal', 36), candidate('new door', 50)])).toEqual({
      part: 'door',
      candidate: 'new door',
      reason: 'no-prices',
    });
    expect(next([candidate('paint', 30.3, priced(1)), candidate('varnish', 30.5, priced(9))])).toEqual({
      part: 'door',
      candidate: 'varnish',
      reason: 'all-small',
    });
  });
  it('is none where nothing helps', () => {
    expect(next([])).toBeNull();
    expect(next([candidate('worse', 20, priced(1))])).toBeNull();
  });
});

describe('options', () => {
  const both: Option = { id: 'both', name: 'Door and wall', swaps: { wall: 'second board', door: 'heavy door' } };
  it('several swaps at once equal the shell built that way, and their costs add', () => {
    const [result] = plan([wall, door], [both]).options;
    const built = shellOf([part('wall', 40, level(60)), part('door', 2, level(43))]);
    expect(result?.R).toEqual(built.R);
    expect(result?.cost).toBe(1000);
    expect(result?.limiting).toBe(built.limiting);
  });
  it('an option with an unpriced swap has no cost; one that names what is gone changes nothing', () => {
    const { options } = plan(
      [wall, door],
      [
        { ...both, swaps: { door: 'two doors', wall: 'second board' } },
        { id: 'gone', name: 'Gone', swaps: { door: 'sold', attic: 'x' } },
      ],
    );
    expect(options[0]?.cost).toBeNull();
    expect(options[1]?.RwGain).toBe(0);
    expect(options[1]?.cost).toBe(0);
  });
});

describe('laws of the plan', () => {
  it('a candidate at least as good in every band never loses', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 10, max: 80, noNaN: true }), { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (levels, better) => {
          const parts = levels.map((R, i): Part => ({
            ...part(`p${i}`, 1 + i, level(R)),
            candidates: [candidate('better', R + better)],
          }));
          for (const rung of plan(parts).rungs) {
            expect(rung.energyGain).toBeGreaterThanOrEqual(-1e-9);
            expect(rung.energyGain).toBeLessThanOrEqual(better + 1e-9);
            expect(rung.RwGain ?? 0).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      repeatable(47, 60),
    );
  });
  it('closing the only part that leaks gives a finite gain', () => {
    const gap: Part = {
      ...part('gap', 1, level(0)),
      candidates: [{ ...candidate('sealed', 0), element: { kind: 'sealed' } }],
    };
    const [rung] = plan([gap]).rungs;
    expect(rung?.energyGain).toBe(150);
    expect(rung?.nextLimiting).toBeNull();
    expect(rung?.RwGain).toBeNull();
  });
});
