import type { BoxMesh } from './boxMesh.ts';
import { dissection } from './dissection.ts';
import type { Piece } from './dissection.ts';
import { squareRoom } from './squareRoom.ts';

/**
 * A dense piece of the elimination: its own unknowns, and those eliminated later that it is tied to. Its matrix is kept
 * in two parts of one store: the rows of its own unknowns (all places each), and the square of the others, which is
 * handed on to the front above.
 */
export interface Front {
  /** number, in the order of elimination, of its first own unknown; the others follow */
  readonly first: number;
  readonly own: number;
  /** numbers of the others, ascending */
  readonly others: Int32Array;
  /** where its own rows begin in the store */
  readonly rows: number;
  /** where the square of the others begins in the store */
  readonly square: number;
  /** places of the others in the front above */
  readonly above: Int32Array;
  readonly below: readonly number[];
}

export interface FrontTree {
  readonly unknowns: number;
  /** each after those below it */
  readonly fronts: readonly Front[];
  /** number of each node in the order of elimination */
  readonly number: Int32Array;
  /** places of all fronts' own rows, first in the store */
  readonly rowsSize: number;
  /** places of the whole store; squares that are not needed at the same time share theirs */
  readonly size: number;
  /** operations of a factorisation */
  readonly cost: number;
}

/** Neighbours of each node: those of node n at first[n] up to first[n + 1]. */
const neighboursOf = ({ unknowns, entries }: BoxMesh): { first: Int32Array; list: Int32Array } => {
  const first = new Int32Array(unknowns + 2);
  const pairs = (use: (a: number, b: number) => void): void => {
    for (const { row, column } of entries)
      row.forEach((a, n) => {
        const b = column[n] ?? 0;
        if (a === b) return;
        use(a, b);
        use(b, a);
      });
  };
  pairs((a) => (first[a + 2] = (first[a + 2] ?? 0) + 1));
  for (let n = 2; n < first.length; n += 1) first[n] = (first[n] ?? 0) + (first[n - 1] ?? 0);
  const list = new Int32Array(first[unknowns + 1] ?? 0);
  pairs((a, b) => {
    list[first[a + 1] ?? 0] = b;
    first[a + 1] = (first[a + 1] ?? 0) + 1;
  });
  return { first, list };
};

/** Of each piece the numbers of the nodes eliminated later that it is tied to, ascending. */
const othersOf = (
  mesh: BoxMesh,
  pieces: readonly Piece[],
  number: Int32Array,
  firsts: readonly number[],
): Int32Array[] => {
  const { first, list } = neighboursOf(mesh);
  const seen = new Int32Array(mesh.unknowns).fill(-1);
  const all: Int32Array[] = [];
  pieces.forEach(({ nodes, below }, piece) => {
    const end = (firsts[piece] ?? 0) + nodes.length;
    const found: number[] = [];
    const look = (it: number): void => {
      if (it < end || seen[it] === piece) return;
      seen[it] = piece;
      found.push(it);
    };
    for (const node of nodes)
      for (let n = first[node] ?? 0; n < (first[node + 1] ?? 0); n += 1) look(number[list[n] ?? 0] ?? 0);
    for (const it of below) all[it]?.forEach(look);
    all.push(Int32Array.from(found).sort());
  });
  return all;
};

/**
 * Everything about the elimination of a mesh that does not depend on frequency.
 * @source multifrontal elimination: I. S. Duff & J. K. Reid, ACM Trans. Math. Softw. 9 (1983) 302-325
 */
export const frontTree = (mesh: BoxMesh): FrontTree => {
  const pieces = dissection(mesh);
  const number = new Int32Array(mesh.unknowns);
  const firsts: number[] = [];
  let next = 0;
  for (const { nodes } of pieces) {
    firsts.push(next);
    for (const node of nodes) number[node] = next++;
  }
  const others = othersOf(mesh, pieces, number, firsts);
  const parent = new Int32Array(pieces.length).fill(-1);
  pieces.forEach(({ below }, piece) => below.forEach((it) => (parent[it] = piece)));
  let rowsSize = 0;
  let cost = 0;
  const rows = pieces.map(({ nodes }, piece) => {
    const places = nodes.length + (others[piece]?.length ?? 0);
    const start = rowsSize;
    rowsSize += nodes.length * places;
    for (let n = 0; n < nodes.length; n += 1) cost += 4 * (places - n) ** 2;
    return start;
  });
  const room = squareRoom(rowsSize);
  const fronts = pieces.map(({ nodes, below }, piece): Front => {
    const tied = others[piece] ?? new Int32Array(0);
    const square = room.take(piece, tied.length ** 2);
    below.forEach(room.free);
    const up = parent[piece] ?? -1;
    const [start, count, list] = [firsts[up] ?? 0, pieces[up]?.nodes.length ?? 0, others[up]];
    const above = tied.map((it) => (it < start + count ? it - start : count + (list?.indexOf(it) ?? 0)));
    return { first: firsts[piece] ?? 0, own: nodes.length, others: tied, rows: rows[piece] ?? 0, square, above, below };
  });
  return { unknowns: mesh.unknowns, fronts, number, rowsSize, size: room.end(), cost };
};

/** One dense front: a full matrix. */
export const fullFront = (order: number): FrontTree => {
  const none = new Int32Array(0);
  const front: Front = { first: 0, own: order, others: none, rows: 0, square: 0, above: none, below: [] };
  const number = Int32Array.from({ length: order }, (_, n) => n);
  return { unknowns: order, fronts: [front], number, rowsSize: order ** 2, size: order ** 2, cost: 0 };
};
