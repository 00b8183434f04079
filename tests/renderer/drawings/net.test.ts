import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitNet, gridStep, net, scaleBar } from '../../../renderer/drawings/net.ts';
import { foldOut } from '../../../renderer/drawings/netFold.ts';
import { lieBox, overlap, toSheet, toSurface, type Lie, type Turn } from '../../../renderer/drawings/netTurn.ts';
import type { SurfaceEntry } from '../../../src/project/schema.ts';
import { repeatable } from '../../support/repeatable.ts';

type Side = 'north' | 'east' | 'south' | 'west';
const surface = (
  id: string,
  kind: SurfaceEntry['kind'],
  width_m: number,
  height_m: number,
  side?: Side,
): SurfaceEntry => ({ id, name: id, kind, width_m, height_m, ...(side ? { side } : {}) });

const boxRoom = (length: number, depth: number, height: number, slopes = 1): SurfaceEntry[] => [
  surface('n', 'wall', length, height, 'north'),
  surface('e', 'wall', depth, height, 'east'),
  surface('s', 'wall', length, height, 'south'),
  surface('w', 'wall', depth, height, 'west'),
  surface('f', 'floor', length, depth),
  ...Array.from({ length: slopes }, (_, i) => surface(`r${i}`, 'roof', length, depth / slopes)),
];
const metres = (least: number, most: number): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });

const worstOverlap = (lies: Readonly<Record<string, Lie>>): number => {
  const boxes = Object.values(lies).map(lieBox);
  return Math.max(...boxes.flatMap((a, i) => boxes.slice(i + 1).map((b) => overlap(a, b))));
};

describe('the unfolded net', () => {
  it('folds the walls of a box room out along the edges of its floor, north up', () => {
    const { lies } = foldOut(boxRoom(5, 4, 2.4));
    const box = (id: string) => {
      const lie = lies[id];
      if (!lie) throw new Error(`no ${id}`);
      return lieBox(lie);
    };
    expect(box('f')).toEqual({ x: 0, y: 0, width: 5, height: 4 });
    expect(box('n')).toEqual({ x: 0, y: -2.4, width: 5, height: 2.4 });
    expect(box('e')).toEqual({ x: 5, y: 0, width: 2.4, height: 4 });
    expect(box('s')).toEqual({ x: 0, y: 4, width: 5, height: 2.4 });
    expect(box('w')).toEqual({ x: -2.4, y: 0, width: 2.4, height: 4 });
    expect(box('r0').x).toBeGreaterThan(7.4);
  });

  it('never lays two surfaces over each other, whatever the sizes', () => {
    fc.assert(
      fc.property(
        metres(0.5, 20),
        metres(0.5, 20),
        metres(0.5, 6),
        fc.integer({ min: 0, max: 3 }),
        (l, d, h, slopes) => {
          expect(worstOverlap(foldOut(boxRoom(l, d, h, slopes)).lies)).toBeLessThan(1e-6);
        },
      ),
      repeatable(1, 200),
    );
  });

  it('keeps walls apart even when they are longer than the floor they stand on', () => {
    const size = fc.record({ w: metres(0.3, 15), h: metres(0.3, 4) });
    fc.assert(
      fc.property(fc.array(size, { minLength: 1, maxLength: 9 }), metres(1, 8), metres(1, 8), (sizes, l, d) => {
        const walls = sizes.map(({ w, h }, i) => surface(`w${i}`, 'wall', w, h));
        expect(worstOverlap(foldOut([...walls, surface('f', 'floor', l, d)]).lies)).toBeLessThan(1e-6);
      }),
      repeatable(2, 200),
    );
  });

  it('places walls without a side north, east, south, west in the order of the document', () => {
    const walls = ['a', 'b', 'c', 'd'].map((id) => surface(id, 'wall', 3, 2));
    const { lies } = foldOut(walls);
    expect(['a', 'b', 'c', 'd'].map((id) => lies[id]?.turn)).toEqual([0, 1, 2, 3]);
  });

  it('takes any point of a surface to the sheet and back', () => {
    const lie = fc.record({
      x: metres(-50, 50),
      y: metres(-50, 50),
      turn: fc.constantFrom<Turn>(0, 1, 2, 3),
      width: metres(0.1, 20),
      height: metres(0.1, 20),
    });
    fc.assert(
      fc.property(lie, metres(0, 20), metres(0, 20), (place, u, v) => {
        const back = toSurface(place, toSheet(place, { u, v }));
        expect(back.u).toBeCloseTo(u, 9);
        expect(back.v).toBeCloseTo(v, 9);
      }),
      repeatable(3),
    );
  });

  it('shows the left end of each wall at the left of someone who faces it from inside', () => {
    const { lies } = foldOut(boxRoom(5, 4, 2.4));
    const left = (id: string) => {
      const lie = lies[id];
      if (!lie) throw new Error(`no ${id}`);
      return toSheet(lie, { u: 0, v: 0 });
    };
    expect(left('n')).toEqual({ x: 0, y: 0 }); // north-west corner
    expect(left('e')).toEqual({ x: 5, y: 0 }); // north-east
    expect(left('s')).toEqual({ x: 5, y: 4 }); // south-east
    expect(left('w')).toEqual({ x: 0, y: 4 }); // south-west
  });

  it('fits the sheet between its margins and maps the pointer back to it', () => {
    fc.assert(
      fc.property(metres(1, 20), metres(1, 20), metres(1, 5), metres(300, 2000), metres(300, 1500), (l, d, h, w, t) => {
        const drawn = net(boxRoom(l, d, h), w / t);
        const margins = { left: 40, right: 10, top: 10, bottom: 40 };
        const scale = fitNet(drawn.bounds, w, t, margins);
        const screen = scale.boxOnScreen(drawn.bounds);
        expect(screen.x).toBeGreaterThanOrEqual(40 - 1e-6);
        expect(screen.y).toBeGreaterThanOrEqual(10 - 1e-6);
        expect(screen.x + screen.width).toBeLessThanOrEqual(w - 10 + 1e-6);
        expect(screen.y + screen.height).toBeLessThanOrEqual(t - 40 + 1e-6);
        const there = scale.toPaper(scale.toScreen({ x: 1.23, y: -0.4 }));
        expect(there.x).toBeCloseTo(1.23, 9);
        expect(there.y).toBeCloseTo(-0.4, 9);
      }),
      repeatable(4),
    );
  });

  it('dimensions every side of every surface exactly once', () => {
    const drawn = net(boxRoom(5.2, 3.6, 2.4, 2), 1.5);
    for (const direction of ['across', 'down'] as const) {
      const measured = drawn.dimensions.filter((it) => it.direction === direction).flatMap((it) => it.of);
      expect([...measured].sort()).toEqual(['e', 'f', 'n', 'r0', 'r1', 's', 'w']);
    }
    const rows = drawn.dimensions.map((a) =>
      drawn.dimensions.filter((b) => b.direction === a.direction && b.row === a.row),
    );
    for (const row of rows)
      for (const a of row)
        for (const b of row) if (a !== b) expect(a.to <= b.from + 1e-6 || b.to <= a.from + 1e-6).toBe(true);
  });
});

describe('the scale of the net', () => {
  it('rules the sheet in half metres, or in feet for those who build in feet', () => {
    expect([gridStep(50), gridStep(30), gridStep(10)]).toEqual([0.5, 1, 2]);
    expect(gridStep(100, true)).toBeCloseTo(0.3048, 9);
    expect(scaleBar(50)).toEqual({ length: 1, words: '1 m' });
    expect(scaleBar(50, true).words).toBe('2 ft');
  });
});
