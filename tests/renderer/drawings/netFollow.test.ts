import { describe, expect, it } from 'vitest';
import { net } from '../../../renderer/drawings/net.ts';
import { resized, sidesOfDimension } from '../../../renderer/drawings/netFollow.ts';
import type { SurfaceEntry } from '../../../src/project/schema.ts';

const surface = (
  id: string,
  kind: SurfaceEntry['kind'],
  width_m: number,
  height_m: number,
  side?: 'north' | 'east' | 'south' | 'west',
): SurfaceEntry => ({ id, name: id, kind, width_m, height_m, ...(side ? { side } : {}) });
const room = [
  surface('n', 'wall', 5, 2.4, 'north'),
  surface('e', 'wall', 4, 2.4, 'east'),
  surface('s', 'wall', 5, 2.4, 'south'),
  surface('w', 'wall', 4, 2.7, 'west'),
  surface('c', 'ceiling', 5, 4),
  surface('f', 'floor', 5, 4),
];
const drawn = net(room, 1.5);
const follow = (direction: 'across' | 'down', of: string) => {
  const dimension = drawn.dimensions.find((it) => it.direction === direction && it.of.includes(of));
  if (!dimension) throw new Error('no such dimension');
  return sidesOfDimension(drawn, dimension).map(({ surface, size }) => `${surface} ${size}`);
};

describe('a measure of the room', () => {
  it('belongs to all surfaces that share it', () => {
    expect(follow('across', 'f')).toEqual(['n width_m', 's width_m', 'c width_m', 'f width_m']);
    expect(follow('down', 'f')).toEqual(['e width_m', 'w width_m', 'c height_m', 'f height_m']);
  });

  it('leaves out a wall of another height', () => {
    expect(follow('across', 'e')).toEqual(['n height_m', 'e height_m', 's height_m']);
    expect(follow('across', 'w')).toEqual(['w height_m']);
  });

  it('becomes one change per surface', () => {
    const sides = [
      { surface: 'f', name: 'f', size: 'width_m' as const },
      { surface: 'f', name: 'f', size: 'height_m' as const },
      { surface: 'n', name: 'n', size: 'width_m' as const },
    ];
    expect(resized(sides, 6)).toEqual([
      { surface: 'f', patch: { width_m: 6, height_m: 6 } },
      { surface: 'n', patch: { width_m: 6 } },
    ]);
  });
});
