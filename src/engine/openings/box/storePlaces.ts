import type { FrontTree } from './frontTree.ts';

/** Where the entries of a symmetric matrix stand, by the nodes of the mesh: each pair once or more. */
export interface Places {
  readonly row: Int32Array;
  readonly column: Int32Array;
}

const find = (sorted: Int32Array, value: number): number => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** Places of entries in the store of a tree's fronts. */
export const storePlaces = ({ fronts, number, unknowns }: FrontTree, { row, column }: Places): Int32Array => {
  const frontOf = new Int32Array(unknowns);
  fronts.forEach(({ first, own }, index) => frontOf.fill(index, first, first + own));
  return row.map((node, n) => {
    const [one, two] = [number[node] ?? 0, number[column[n] ?? 0] ?? 0];
    const [a, b] = [Math.min(one, two), Math.max(one, two)];
    const front = fronts[frontOf[a] ?? 0];
    if (front === undefined) return -1;
    const { first, own, others, rows } = front;
    const place = b < first + own ? b - first : own + find(others, b);
    return rows + (a - first) * (own + others.length) + place;
  });
};
