import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeNetLabels, type WantedNetLabel } from '../../../renderer/drawings/netLabels.ts';
import { overlap } from '../../../renderer/drawings/netTurn.ts';
import { repeatable } from '../../support/repeatable.ts';

const sheet = { x: 0, y: 0, width: 800, height: 600 };
const wall = { x: 100, y: 100, width: 250, height: 120 };

describe('names on the net', () => {
  it('stand in the middle of an empty surface', () => {
    const label: WantedNetLabel = { id: 'n', width: 60, height: 30, home: wall, within: wall, where: 'inside' };
    expect(placeNetLabels([[label]], [], sheet)[0]?.box).toMatchObject({ x: 195, y: 145 });
  });

  it('make room for a door in the middle', () => {
    const label: WantedNetLabel = { id: 'n', width: 60, height: 30, home: wall, within: wall, where: 'inside' };
    const door = { id: 'd', x: 200, y: 120, width: 50, height: 100 };
    const place = placeNetLabels([[label]], [door], sheet)[0]?.box;
    expect(place && overlap(place, door)).toBe(0);
    expect(place && overlap(place, wall)).toBeCloseTo(60 * 30, 6);
  });

  it('stand beside what is too small for them, inside its surface, clear of one another', () => {
    const vents = [120, 150, 180].map((x) => ({ id: `v${x}`, x, y: 150, width: 8, height: 8 }));
    const labels = vents.map((vent): WantedNetLabel => ({
      id: vent.id,
      width: 40,
      height: 26,
      home: vent,
      within: wall,
      where: 'beside',
    }));
    const places = placeNetLabels(
      labels.map((label) => [label]),
      vents,
      sheet,
    ).map(({ box }) => box);
    expect(places).toHaveLength(3);
    places.forEach((a, i) => {
      for (const b of places.slice(i + 1)) expect(overlap(a, b)).toBe(0);
      for (const vent of vents) expect(overlap(a, vent)).toBe(0);
      expect(overlap(a, wall)).toBeCloseTo(40 * 26, 6);
    });
  });

  it('are worded shorter where the full wording does not fit beside a door', () => {
    const full: WantedNetLabel = { id: 'n', width: 90, height: 60, home: wall, within: wall, where: 'inside' };
    const short = { ...full, height: 16 };
    const door = { id: 'd', x: 110, y: 120, width: 230, height: 80 };
    expect(placeNetLabels([[full, short]], [door], sheet)[0]?.label).toBe(short);
    expect(placeNetLabels([[full, short]], [], sheet)[0]?.label).toBe(full);
  });

  it('never leave the sheet', () => {
    const box = fc.record({
      x: fc.integer({ min: 0, max: 780 }),
      y: fc.integer({ min: 0, max: 580 }),
      width: fc.integer({ min: 4, max: 20 }),
      height: fc.integer({ min: 4, max: 20 }),
    });
    fc.assert(
      fc.property(fc.array(box, { minLength: 1, maxLength: 12 }), (boxes) => {
        const labels = boxes.map((home, i): WantedNetLabel => ({
          id: String(i),
          width: 50,
          height: 25,
          home,
          within: sheet,
          where: 'beside',
        }));
        for (const { box } of placeNetLabels(
          labels.map((label) => [label]),
          [],
          sheet,
        ))
          expect(overlap(box, sheet)).toBeCloseTo(50 * 25, 6);
      }),
      repeatable(9, 60),
    );
  });
});
