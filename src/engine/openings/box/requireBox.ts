import { requirePositive } from '../../quantities/index.ts';
import { boxFaults } from './boxFaults.ts';
import type { BoxGeometry } from './boxGeometry.ts';
import { planGrid } from './planGrid.ts';

/** Beyond this a frequency takes seconds and the matrix hundreds of megabytes. */
export const MOST_UNKNOWNS = 60_000;

/** Crossings of the grid lines, at least as many as unknowns; before the lines on edges, where it is hopeless already. */
export const gridSize = (geometry: BoxGeometry, cellSize: number): number => {
  const least = (geometry.length / cellSize) * (geometry.width / cellSize);
  if (least > 100 * MOST_UNKNOWNS) return Math.round(least);
  const { x, y } = planGrid(geometry, cellSize);
  return x.length * y.length;
};

/** @throws RangeError for a box that cannot be built, naming the first fault, or a grid that is too fine */
export const requireBox = (geometry: BoxGeometry, cellSizes: readonly number[]): void => {
  const [first] = boxFaults(geometry);
  if (first) throw new RangeError(`${first.path.join('.')} must be ${first.allowed}, got ${String(first.value)}`);
  for (const cellSize of cellSizes) {
    requirePositive('cell size', cellSize, 'm');
    const size = gridSize(geometry, cellSize);
    if (size > MOST_UNKNOWNS)
      throw new RangeError(`grid must have at most ${MOST_UNKNOWNS} unknowns, got ${size} at ${cellSize} m`);
  }
};
