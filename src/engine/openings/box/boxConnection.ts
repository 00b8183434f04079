import type { BoxPort } from './boxGeometry.ts';
import { SOLID, lineAt } from './planGrid.ts';
import type { PlanGrid } from './planGrid.ts';

/** The cells that a port opens into. */
export const portCells = ({ x, y }: PlanGrid, port: BoxPort): number[] => {
  const rows = y.length - 1;
  const span = (lines: readonly number[], from: number, to: number): number[] => {
    const first = lineAt(lines, from);
    return Array.from({ length: lineAt(lines, to) - first }, (_, n) => first + n);
  };
  if (port.kind === 'face')
    return span(x, port.x0, port.x1).flatMap((i) => span(y, port.y0, port.y1).map((j) => i * rows + j));
  const [from, to] = [port.centre - port.width / 2, port.centre + port.width / 2];
  if (port.side === 'W') return span(y, from, to);
  if (port.side === 'E') return span(y, from, to).map((j) => (x.length - 2) * rows + j);
  return span(x, from, to).map((i) => i * rows + (port.side === 'S' ? 0 : rows - 1));
};

/** Whether air or lining leads from one cell to another, over the cells' edges. */
export const connected = ({ x, y, cells }: PlanGrid, from: number, to: number): boolean => {
  const rows = y.length - 1;
  const columns = x.length - 1;
  const seen = new Set([from]);
  const waiting = [from];
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    const [i, j] = [Math.floor(cell / rows), cell % rows];
    const beside = [
      i > 0 ? cell - rows : cell,
      i + 1 < columns ? cell + rows : cell,
      j > 0 ? cell - 1 : cell,
      j + 1 < rows ? cell + 1 : cell,
    ];
    for (const next of beside)
      if (!seen.has(next) && cells[next] !== SOLID) {
        seen.add(next);
        waiting.push(next);
      }
  }
  return seen.has(to);
};
