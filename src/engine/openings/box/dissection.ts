import type { BoxMesh } from './boxMesh.ts';
import { SOLID } from './planGrid.ts';

/** Unknowns that are eliminated together, after those of the pieces below. */
export interface Piece {
  readonly nodes: readonly number[];
  /** places of the pieces that it parted, in the list of pieces */
  readonly below: readonly number[];
}

/** No smaller part is parted further. */
const SMALLEST = 10;
/** A line across leaves at least this share on either side. */
const LEAST_SHARE = 0.2;

/** Where a node lies on the grid, and on which sides of it there are cells. */
interface Lattice {
  readonly i: Int32Array;
  readonly j: Int32Array;
  readonly left: Uint8Array;
  readonly right: Uint8Array;
  readonly near: Uint8Array;
  readonly far: Uint8Array;
}

const latticeOf = ({ grid, unknowns, nodes }: BoxMesh): Lattice => {
  const rows = grid.y.length;
  const byte = (): Uint8Array => new Uint8Array(unknowns);
  const lattice = {
    ...{ i: new Int32Array(unknowns), j: new Int32Array(unknowns) },
    ...{ left: byte(), right: byte(), near: byte(), far: byte() },
  };
  const open = (i: number, j: number): boolean =>
    i >= 0 && j >= 0 && i + 1 < grid.x.length && j + 1 < rows && grid.cells[i * (rows - 1) + j] !== SOLID;
  nodes.forEach((node, place) => {
    if (node < 0) return;
    const [i, j] = [Math.floor(place / rows), place % rows];
    const [a, b, c, d] = [open(i - 1, j - 1), open(i - 1, j), open(i, j - 1), open(i, j)];
    lattice.i[node] = i;
    lattice.j[node] = j;
    lattice.left[node] = Number(a || b);
    lattice.right[node] = Number(c || d);
    lattice.near[node] = Number(a || c);
    lattice.far[node] = Number(b || d);
  });
  return lattice;
};

/** A line of the grid that parts a set of nodes: those on it that have cells on both sides. */
interface Cut {
  readonly line: number;
  /** nodes on it, and the smaller of the two parts */
  readonly size: number;
  readonly smaller: number;
}

/** The line across one direction that takes fewest nodes, the most even one of equals. */
const bestCut = (nodes: readonly number[], place: Int32Array, before: Uint8Array, after: Uint8Array): Cut | null => {
  const first = nodes.reduce((least, node) => Math.min(least, place[node] ?? 0), Infinity);
  const last = nodes.reduce((most, node) => Math.max(most, place[node] ?? 0), -Infinity);
  const count = new Int32Array(last - first + 1);
  const both = new Int32Array(last - first + 1);
  const ended = new Int32Array(last - first + 1);
  for (const node of nodes) {
    const line = (place[node] ?? 0) - first;
    count[line] = (count[line] ?? 0) + 1;
    if (before[node] === 1 && after[node] === 1) both[line] = (both[line] ?? 0) + 1;
    else if (before[node] === 1) ended[line] = (ended[line] ?? 0) + 1;
  }
  let best: Cut | null = null;
  let passed = 0;
  for (let line = 0; line < count.length; line += 1) {
    const size = both[line] ?? 0;
    const left = passed + (ended[line] ?? 0);
    const smaller = Math.min(left, nodes.length - size - left);
    passed += count[line] ?? 0;
    if (smaller < LEAST_SHARE * nodes.length) continue;
    if (best === null || size < best.size || (size === best.size && smaller > best.smaller))
      best = { line: line + first, size, smaller };
  }
  return best;
};

/**
 * Nested dissection of a box: lines of the grid part it into ever smaller pieces, through the gaps of its partitions
 * where they are short, so that each piece is eliminated by itself before the line that parted it.
 * @returns pieces, each after those below it; together they hold every node once
 * @source nested dissection of a regular grid: A. George, SIAM J. Numer. Anal. 10 (1973) 345-363
 */
export const dissection = (mesh: BoxMesh): readonly Piece[] => {
  const { i, j, left, right, near, far } = latticeOf(mesh);
  const pieces: Piece[] = [];
  const part = (nodes: readonly number[]): number => {
    const whole = (): number => pieces.push({ nodes, below: [] }) - 1;
    if (nodes.length <= SMALLEST) return whole();
    const cuts = [bestCut(nodes, i, left, right), bestCut(nodes, j, near, far)] as const;
    const [alongX, alongY] = cuts;
    if (alongX === null && alongY === null) return whole();
    const acrossX = alongY === null || (alongX !== null && alongX.size <= alongY.size);
    const [cut, place, before, after] = acrossX ? [alongX, i, left, right] : [alongY, j, near, far];
    const line = cut?.line ?? 0;
    const sideOf = (node: number): number => {
      const away = (place[node] ?? 0) - line;
      return away !== 0 ? Math.sign(away) : (after[node] ?? 0) - (before[node] ?? 0);
    };
    const side = (wanted: number): number[] => nodes.filter((node) => sideOf(node) === wanted);
    const below = [part(side(-1)), part(side(1))];
    return pieces.push({ nodes: side(0), below }) - 1;
  };
  part(Array.from({ length: mesh.unknowns }, (_, node) => node));
  return pieces;
};
