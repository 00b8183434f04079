import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelRegions, type LevelGrid } from '../../../renderer/drawings/levelRegions.ts';
import { repeatable } from '../../support/repeatable.ts';

type Point = readonly [number, number];

const loopsOf = (path: string): Point[][] =>
  path
    .split('Z')
    .filter(Boolean)
    .map((loop) =>
      loop
        .slice(1)
        .split('L')
        .map((pair): Point => {
          const [x = NaN, y = NaN] = pair.split(',').map(Number);
          return [x, y];
        }),
    );

/** Twice the area enclosed, holes off. */
const area = (path: string): number =>
  Math.abs(
    loopsOf(path).reduce(
      (sum, loop) =>
        sum +
        loop.reduce((all, [x, y], n) => {
          const [nextX, nextY] = loop[(n + 1) % loop.length] ?? [NaN, NaN];
          return all + (x * nextY - nextX * y) / 2;
        }, 0),
      0,
    ),
  );

/** How often the path winds round a point. */
const winding = (path: string, [px, py]: Point): number => {
  let turns = 0;
  for (const loop of loopsOf(path))
    loop.forEach(([x0, y0], n) => {
      const [x1, y1] = loop[(n + 1) % loop.length] ?? [NaN, NaN];
      const side = (x1 - x0) * (py - y0) - (px - x0) * (y1 - y0);
      if (y0 <= py && y1 > py && side > 0) turns += 1;
      if (y0 > py && y1 <= py && side < 0) turns -= 1;
    });
  return turns;
};

const grid = (columns: number, rows: number, levels: readonly number[]): LevelGrid => ({
  x: Float64Array.from({ length: columns }, (_, i) => 100 * i),
  y: Float64Array.from({ length: rows }, (_, j) => 100 * j),
  levels: Float64Array.from(levels),
});
const only = (of: LevelGrid, level: number) => {
  const [region] = levelRegions(of, [level]);
  if (!region) throw new Error('no region');
  return region;
};

describe('the region above a level', () => {
  it('is the whole grid where all of it is above, with no line in it', () => {
    const { area: path, line } = only(grid(4, 3, new Array<number>(12).fill(1)), 0);
    expect(area(path)).toBe(300 * 200);
    expect(line).toBe('');
  });
  it('leaves out cells that have a corner without a level, also where two such cells touch at a corner', () => {
    const levels = new Array<number>(16).fill(1);
    levels[0] = levels[15] = NaN;
    expect(area(only(grid(4, 4, levels), 0).area)).toBe(7 * 100 * 100);
    const crossed = [NaN, 1, 1, 1, 1, 1, 1, 1, NaN];
    expect(area(only(grid(3, 3, crossed), 0).area)).toBe(2 * 100 * 100);
  });
  it('ends where the level is reached along the grid lines', () => {
    const { area: path, line } = only(grid(2, 2, [0, 0, 4, 4]), 1);
    expect(area(path)).toBe(75 * 100);
    expect(line.match(/[ML]25,\d+/g)).toHaveLength(2);
  });
  it('joins two corners across from each other only where the middle is above as well', () => {
    expect(loopsOf(only(grid(2, 2, [1, -3, -3, 1]), 0).area)).toHaveLength(2);
    expect(loopsOf(only(grid(2, 2, [3, -1, -1, 3]), 0).area)).toHaveLength(1);
  });
  it('has a hole round a quiet place', () => {
    const levels = new Array<number>(25).fill(1);
    levels[12] = -1;
    const { area: path, line } = only(grid(5, 5, levels), 0);
    // a square on its corner, half a cell each way
    expect(area(path)).toBe(400 * 400 - 2 * 50 * 50);
    expect(line.startsWith('M') && line.lastIndexOf('M') === 0).toBe(true);
  });
  it('winds once round every crossing of the grid that is above, and round none that is below', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 7 }),
        fc.integer({ min: 2, max: 7 }),
        fc.array(fc.oneof(fc.integer({ min: -9, max: 9 }), fc.constant(NaN)), { minLength: 49, maxLength: 49 }),
        (columns, rows, values) => {
          const levels = values.slice(0, columns * rows).map((level) => (level === 0 ? 1 : level));
          const it = grid(columns, rows, levels);
          const path = only(it, 0).area;
          for (let i = 0; i + 1 < columns; i += 1)
            for (let j = 0; j + 1 < rows; j += 1) {
              const corners = [i * rows + j, (i + 1) * rows + j, (i + 1) * rows + j + 1, i * rows + j + 1];
              const whole = corners.every((at) => !Number.isNaN(levels[at]));
              corners.forEach((at, n) => {
                // just inside the cell from its corner
                const point: Point = [100 * i + (n === 0 || n === 3 ? 0.1 : 99.9), 100 * j + (n < 2 ? 0.2 : 99.8)];
                expect(Math.abs(winding(path, point))).toBe(whole && (levels[at] ?? NaN) > 0 ? 1 : 0);
              });
            }
        },
      ),
      repeatable(20_262, 200),
    );
  });
});
