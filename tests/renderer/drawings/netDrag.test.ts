import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapsOf, handlesOf, movedBy, movedWithGaps, pulledBy } from '../../../renderer/drawings/netDrag.ts';
import { placeOpenings } from '../../../renderer/drawings/netOpenings.ts';
import { stepOnSurface, type Lie, type Turn } from '../../../renderer/drawings/netTurn.ts';
import type { OpeningEntry, SurfaceEntry } from '../../../src/project/schema.ts';
import { repeatable } from '../../support/repeatable.ts';

const door: OpeningEntry = { id: 'd', name: 'Door', kind: 'door', width_m: 0.9, height_m: 2, x_m: 1, y_m: 0 };
const gap: OpeningEntry = { id: 's', name: 'Gap', kind: 'slit', length_mm: 900, width_mm: 8, depth_mm: 44 };
const wall: SurfaceEntry = { id: 'n', name: 'North', kind: 'wall', width_m: 5, height_m: 2.4, openings: [door, gap] };
const [placedDoor, placedGap] = placeOpenings(wall);
if (!placedDoor || !placedGap) throw new Error('the openings are not placed');
const far = fc.double({ min: -30, max: 30, noNaN: true });

describe('dragging on the net', () => {
  it('moves an opening by whole centimetres', () => {
    expect(movedBy(wall, placedDoor, 0.5049, 0.111)).toEqual({ x_m: 1.5, y_m: 0.11 });
  });

  it('pulls the upper right corner of a door without moving its lower left one', () => {
    expect(pulledBy(wall, placedDoor, { across: 1, up: 1 }, 0.1, -0.05)).toEqual({
      x_m: 1,
      y_m: 0,
      width_m: 1,
      height_m: 1.95,
    });
  });

  it('keeps the far edge where it is when the near one is pulled', () => {
    fc.assert(
      fc.property(far, (du) => {
        const pulled = pulledBy(wall, placedDoor, { across: 0, up: 0 }, du, 0);
        if (!('width_m' in pulled)) throw new Error('a door has a width');
        expect(pulled.x_m + pulled.width_m).toBeCloseTo(1.9, 6);
        expect(pulled.x_m).toBeGreaterThanOrEqual(0);
        expect(pulled.width_m).toBeGreaterThan(0);
      }),
      repeatable(7),
    );
  });

  it('never lets a pulled opening leave its surface', () => {
    fc.assert(
      fc.property(far, far, fc.constantFrom(...handlesOf(placedDoor)), (du, dv, handle) => {
        const pulled = pulledBy(wall, placedDoor, handle, du, dv);
        if (!('width_m' in pulled)) throw new Error('a door has a width');
        expect(pulled.x_m + pulled.width_m).toBeLessThanOrEqual(5 + 1e-9);
        expect(pulled.y_m).toBeGreaterThanOrEqual(0);
        expect(pulled.y_m + pulled.height_m).toBeLessThanOrEqual(2.4 + 1e-9);
      }),
      repeatable(8),
    );
  });

  it('lengthens a gap by its end', () => {
    expect(pulledBy(wall, placedGap, { across: 1, up: null }, 0.3, 0)).toMatchObject({ x_m: 1, length_mm: 1200 });
  });

  it('takes the gap under a door along, and leaves other gaps where they are', () => {
    const own: OpeningEntry = { ...gap, id: 'own', x_m: 1, y_m: 0 };
    const far: OpeningEntry = { ...gap, id: 'far', x_m: 3, y_m: 0 };
    const surface: SurfaceEntry = { ...wall, openings: [door, own, far] };
    const openings = placeOpenings(surface);
    const gaps = gapsOf(placedDoor, openings);
    expect(gaps.map((it) => it.id)).toEqual(['own']);
    expect(movedWithGaps(surface, placedDoor, gaps, 0.5, 0)).toEqual([
      { opening: 'd', x_m: 1.5, y_m: 0 },
      { opening: 'own', x_m: 1.5, y_m: 0 },
    ]);
  });

  it('takes an arrow key to the same direction on the sheet, whatever the turn', () => {
    const lie = (turn: Turn): Lie => ({ x: 3, y: 7, turn, width: 5, height: 2 });
    const right = ([0, 1, 2, 3] as const).map((turn) => stepOnSurface(lie(turn), 1, 0));
    expect(right.map(({ u, v }) => [Math.round(u) + 0, Math.round(v) + 0])).toEqual([
      [1, 0], // on the north wall to the right is to the right
      [0, 1], // on the east wall it is up
      [-1, 0],
      [0, -1],
    ]);
  });
});
