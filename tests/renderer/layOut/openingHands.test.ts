import { describe, expect, it } from 'vitest';
import { net } from '../../../renderer/drawings/net.ts';
import { createOpeningHands } from '../../../renderer/views/layOut/openingHands.ts';
import type { OpeningEntry, SurfaceEntry } from '../../../src/project/schema.ts';

const door: OpeningEntry = { id: 'd', name: 'Door', kind: 'door', width_m: 0.9, height_m: 2, x_m: 1, y_m: 0 };
const wall: SurfaceEntry = {
  id: 'e',
  name: 'East',
  kind: 'wall',
  side: 'east',
  width_m: 5,
  height_m: 2.4,
  openings: [door],
};
const surface = net([wall], 1.5).surfaces[0];
const opening = surface?.openings[0];
if (!surface || !opening) throw new Error('the door is not drawn');

const recorded = () => {
  const log: unknown[] = [];
  const hands = createOpeningHands(() => {
    log.push('begin');
    return {
      preview: (command, args) => log.push([command, args]),
      commit: () => log.push('commit'),
      cancel: () => log.push('cancel'),
    };
  });
  return { log, hands };
};

describe('hands on an opening', () => {
  it('take a press that hardly moves for a press', () => {
    const { log, hands } = recorded();
    hands.grab(surface, opening, null, { u: 1.2, v: 1 }, { x: 100, y: 100 });
    hands.pull(() => ({ u: 1.25, v: 1 }), { x: 102, y: 101 });
    hands.drop();
    expect(log).toEqual([]);
  });

  it('make one gesture of a drag, always from where the opening lay at first', () => {
    const { log, hands } = recorded();
    hands.grab(surface, opening, null, { u: 1.2, v: 1 }, { x: 100, y: 100 });
    hands.pull(() => ({ u: 1.7, v: 1 }), { x: 120, y: 100 });
    hands.pull(() => ({ u: 2.2, v: 1 }), { x: 140, y: 100 });
    hands.drop();
    expect(log).toEqual([
      'begin',
      ['moveOpenings', { moves: [{ opening: 'd', x_m: 1.5, y_m: 0 }] }],
      ['moveOpenings', { moves: [{ opening: 'd', x_m: 2, y_m: 0 }] }],
      'commit',
    ]);
    expect(hands.holding).toBe(false);
  });

  it('put everything back when the drag is given up', () => {
    const { log, hands } = recorded();
    hands.grab(surface, opening, { across: 1, up: 1 }, { u: 1.9, v: 2 }, { x: 0, y: 0 });
    hands.pull(() => ({ u: 2.1, v: 2.2 }), { x: 20, y: 0 });
    hands.letGo();
    expect(log.at(-1)).toBe('cancel');
    expect(log[1]).toEqual(['setOpening', { opening: 'd', patch: { x_m: 1, y_m: 0, width_m: 1.1, height_m: 2.2 } }]);
  });

  it('make one gesture of a run of arrow presses, along the sheet', () => {
    const { log, hands } = recorded();
    hands.nudge(surface, opening, 0, 0.01); // down the sheet is to the right on the east wall
    hands.nudge(surface, opening, 0, 0.1);
    hands.endNudge();
    hands.endNudge();
    expect(log).toEqual([
      'begin',
      ['moveOpenings', { moves: [{ opening: 'd', x_m: 1.01, y_m: 0 }] }],
      ['moveOpenings', { moves: [{ opening: 'd', x_m: 1.1, y_m: 0 }] }],
      'commit',
    ]);
  });
});
