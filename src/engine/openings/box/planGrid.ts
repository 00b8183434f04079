import { AIR } from './boxGeometry.ts';
import type { BoxFilling, BoxGeometry, BoxRectangle } from './boxGeometry.ts';

/** Edges closer than this are one, m. */
export const MERGED = 2e-4;
/** Marks a cell that is solid. */
export const SOLID = -1;

/** Lines along x and y, and for each cell (row after row along x) the number of its filling, or SOLID. */
export interface PlanGrid {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly fillings: readonly BoxFilling[];
  readonly cells: Int32Array;
}

/** Grid lines on every edge, closer ones merged, and each interval in equal parts no longer than the cell size. */
export const gridLines = (edges: readonly number[], length: number, cellSize: number): number[] => {
  const kept: number[] = [0];
  for (const edge of [...edges].sort((a, b) => a - b)) {
    const last = kept.at(-1) ?? 0;
    if (edge - last >= MERGED && length - edge >= MERGED) kept.push(edge);
  }
  kept.push(length);
  return kept.flatMap((to, i) => {
    if (i === 0) return [to];
    const from = kept[i - 1] ?? 0;
    const parts = Math.max(1, Math.ceil((to - from) / cellSize - 1e-9));
    return Array.from({ length: parts }, (_, n) => (n + 1 === parts ? to : from + ((to - from) * (n + 1)) / parts));
  });
};

/** The nearest grid line. */
export const lineAt = (lines: readonly number[], place: number): number => {
  let best = 0;
  lines.forEach((line, i) => {
    if (Math.abs(line - place) < Math.abs((lines[best] ?? 0) - place)) best = i;
  });
  return best;
};

const edgesOf = ({ solids, linings, ports }: BoxGeometry): { x: number[]; y: number[] } => {
  const x: number[] = [];
  const y: number[] = [];
  const add = (it: BoxRectangle): void => {
    x.push(it.x0, it.x1);
    y.push(it.y0, it.y1);
  };
  solids.forEach(add);
  linings.forEach(add);
  for (const port of ports)
    if (port.kind === 'face') add(port);
    else
      (port.side === 'W' || port.side === 'E' ? y : x).push(port.centre - port.width / 2, port.centre + port.width / 2);
  return { x, y };
};

/**
 * Rectilinear grid of a box: a line on every edge of a wall, lining, partition tip and port; a partition thinner than a
 * cell gets one cell of exactly its thickness.
 * @param geometry plan of the box
 * @param cellSize h, m, > 0
 */
export const planGrid = (geometry: BoxGeometry, cellSize: number): PlanGrid => {
  const edges = edgesOf(geometry);
  const x = gridLines(edges.x, geometry.length, cellSize);
  const y = gridLines(edges.y, geometry.width, cellSize);
  const rows = y.length - 1;
  const cells = new Int32Array((x.length - 1) * rows);
  const names: string[] = [];
  const fillings: BoxFilling[] = [];
  const numberOf = (filling: BoxFilling): number => {
    const name = JSON.stringify(filling);
    const known = names.indexOf(name);
    if (known >= 0) return known;
    names.push(name);
    fillings.push(filling);
    return names.length - 1;
  };
  const paint = (it: BoxRectangle, value: number): void => {
    const [fromX, toX, fromY, toY] = [lineAt(x, it.x0), lineAt(x, it.x1), lineAt(y, it.y0), lineAt(y, it.y1)];
    for (let i = fromX; i < toX; i += 1) cells.fill(value, i * rows + fromY, i * rows + toY);
  };
  cells.fill(numberOf(geometry.base));
  for (const lining of geometry.linings) paint(lining, numberOf(lining.filling));
  for (const solid of geometry.solids) paint(solid, SOLID);
  return { x, y, fillings: fillings.length > 0 ? fillings : [AIR], cells };
};
