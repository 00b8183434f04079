import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alongEdges, keepInside, placeOpenings } from '../../../renderer/drawings/netOpenings.ts';
import type { OpeningEntry, SurfaceEntry } from '../../../src/project/schema.ts';
import { repeatable } from '../../support/repeatable.ts';

const wall = (openings: OpeningEntry[]): SurfaceEntry => ({
  id: 'n',
  name: 'North wall',
  kind: 'wall',
  width_m: 5,
  height_m: 2.4,
  openings,
});
const door: OpeningEntry = { id: 'd', name: 'Door', kind: 'door', width_m: 0.9, height_m: 2 };
const window: OpeningEntry = { id: 'g', name: 'Window', kind: 'window', width_m: 1.2, height_m: 1 };
const gap: OpeningEntry = { id: 's', name: 'Gap', kind: 'slit', length_mm: 900, width_mm: 8, depth_mm: 44 };

describe('openings on their surface', () => {
  it('stand a door on the floor and a window at sill height, side by side', () => {
    const [d, w] = placeOpenings(wall([door, window]));
    expect(d?.v).toBe(0);
    expect(w?.v).toBe(1);
    if (!d || !w) throw new Error('missing');
    expect(d.u + d.width <= w.u || w.u + w.width <= d.u).toBe(true);
  });

  it('draw the gap under a door along the bottom of the door above it', () => {
    const [d, s] = placeOpenings(wall([door, gap]));
    expect(s?.line).toEqual([
      { u: d?.u, v: 0 },
      { u: (d?.u ?? 0) + 0.9, v: 0 },
    ]);
  });

  it('carry a gap round all edges of a door when it is that long', () => {
    const [, s] = placeOpenings(wall([door, { ...gap, length_mm: 5800 }]));
    expect(s?.line).toHaveLength(5);
  });

  it('draw a gap in a wall without a door along the bottom of the wall', () => {
    const [s] = placeOpenings(wall([gap]));
    expect(s?.line[0]).toEqual({ u: 0, v: 0 });
  });

  it('keep the place the builder gave', () => {
    const [d] = placeOpenings(wall([{ ...door, x_m: 3.5, y_m: 0.1 }]));
    expect([d?.u, d?.v]).toEqual([3.5, 0.1]);
  });

  it('never leave their surface, wherever they are dragged', () => {
    const far = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(far, far, (u, v) => {
        const at = keepInside({ width_m: 5, height_m: 2.4 }, { width: 0.9, height: 2 }, { u, v });
        expect(at.u).toBeGreaterThanOrEqual(0);
        expect(at.u).toBeLessThanOrEqual(4.1);
        expect(at.v).toBeGreaterThanOrEqual(0);
        expect(at.v).toBeLessThanOrEqual(0.4);
      }),
      repeatable(5),
    );
  });

  it('run a line along edges for exactly its length', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5.8, noNaN: true }), (length) => {
        const line = alongEdges({ u: 1, v: 0, width: 0.9, height: 2 }, length);
        const run = line.reduce((sum, point, i) => {
          const before = line[i - 1];
          return before ? sum + Math.hypot(point.u - before.u, point.v - before.v) : 0;
        }, 0);
        expect(run).toBeCloseTo(length, 9);
      }),
      repeatable(6),
    );
  });
});
