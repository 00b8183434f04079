/** Levels at the crossings of grid lines; NaN where there is nothing. */
export interface LevelGrid {
  /** px, ascending with the first index */
  readonly x: Float64Array;
  /** px */
  readonly y: Float64Array;
  /** at place i·(lines along y) + j */
  readonly levels: Float64Array;
}

/** Where the level lies above a value, as paths. */
export interface LevelRegion {
  /** the region, closed, its holes turning the other way */
  readonly area: string;
  /** the part of its edge on which the level has that value: not where the grid ends */
  readonly line: string;
}

/** Pieces of edge, each from the number of a place to the number of the next; two pieces may begin at a corner. */
interface Edges {
  readonly first: Int32Array;
  readonly second: Int32Array;
}

const add = ({ first, second }: Edges, from: number, to: number): void => {
  if ((first[from] ?? -1) < 0) first[from] = to;
  else second[from] = to;
};

/** Whether all four corners of a cell have a level. */
const wholeCells = ({ x, y, levels }: LevelGrid): Uint8Array => {
  const rows = y.length;
  const cells = new Uint8Array(levels.length);
  for (let i = 0; i + 1 < x.length; i += 1)
    for (let j = 0; j + 1 < rows; j += 1) {
      const at = i * rows + j;
      const sum = (levels[at] ?? 0) + (levels[at + 1] ?? 0) + (levels[at + rows] ?? 0) + (levels[at + rows + 1] ?? 0);
      cells[at] = Number.isNaN(sum) ? 0 : 1;
    }
  return cells;
};

/**
 * Pieces of the region's edge, cell by cell, with the region on one hand. Places are numbered: corners of the grid first,
 * then crossings on edges along x, then on edges along y, each edge by the corner it begins at.
 */
const edgesOf = ({ x, y, levels }: LevelGrid, cells: Uint8Array, level: number): Edges => {
  const count = levels.length;
  const rows = y.length;
  const edges = { first: new Int32Array(3 * count).fill(-1), second: new Int32Array(3 * count).fill(-1) };
  const corner = [0, rows, rows + 1, 1];
  const crossing = [count, 2 * count + rows, count + 1, 2 * count];
  // the cell beyond each edge; beyond the grid there is none, for the last line of corners begins no cell
  const beside = [-1, rows, 1, -rows];
  const above = [false, false, false, false];
  for (let i = 0; i + 1 < x.length; i += 1)
    for (let j = 0; j + 1 < rows; j += 1) {
      const at = i * rows + j;
      if (cells[at] === 0) continue;
      let [inside, sum] = [0, 0];
      for (let n = 0; n < 4; n += 1) {
        const value = levels[at + (corner[n] ?? 0)] ?? 0;
        above[n] = value > level;
        if (value > level) inside += 1;
        sum += value;
      }
      if (inside === 0) continue;
      // two corners across from each other: joined through the middle of the cell, or not
      const turn = inside === 2 && above[0] === above[2] && sum / 4 <= level ? 3 : 1;
      for (let n = 0; n < 4; n += 1) {
        const next = (n + 1) % 4;
        const [here, there] = [above[n], above[next]];
        const onEdge = at + (crossing[n] ?? 0);
        if (here && !there) {
          // out here, in again over the next edge that leads in
          let back = (n + turn) % 4;
          while (above[back] || !above[(back + 1) % 4]) back = (back + turn) % 4;
          add(edges, onEdge, at + (crossing[back] ?? 0));
        }
        if (cells[at + (beside[n] ?? 0)] === 1 || (!here && !there)) continue;
        add(edges, here ? at + (corner[n] ?? 0) : onEdge, there ? at + (corner[next] ?? 0) : onEdge);
      }
    }
  return edges;
};

const tenths = (value: number): number => Math.round(value * 10) / 10;

/**
 * The region in which levels, taken as straight along the grid lines, lie above a value; one closed path without seams.
 * @param level the value, in the unit of the levels
 */
export const levelRegion = (grid: LevelGrid, cells: Uint8Array, level: number): LevelRegion => {
  const { x, y, levels } = grid;
  const [count, rows] = [levels.length, y.length];
  const { first, second } = edgesOf(grid, cells, level);
  const place = (number: number): string => {
    const at = number % count;
    const along = number < count ? -1 : number < 2 * count ? rows : 1;
    const [i, j] = [Math.floor(at / rows), at % rows];
    if (along < 0) return `${tenths(x[i] ?? 0)},${tenths(y[j] ?? 0)}`;
    const share = (level - (levels[at] ?? 0)) / ((levels[at + along] ?? 0) - (levels[at] ?? 0));
    const px = along === 1 ? (x[i] ?? 0) : (x[i] ?? 0) + share * ((x[i + 1] ?? 0) - (x[i] ?? 0));
    const py = along === 1 ? (y[j] ?? 0) + share * ((y[j + 1] ?? 0) - (y[j] ?? 0)) : (y[j] ?? 0);
    return `${tenths(px)},${tenths(py)}`;
  };
  let area = '';
  let line = '';
  for (let start = 0; start < first.length; start += 1)
    while ((first[start] ?? -1) >= 0) {
      let from = start;
      let pen = false;
      let here = place(start);
      area += `M${here}`;
      do {
        const to: number = first[from] ?? start;
        first[from] = second[from] ?? -1;
        second[from] = -1;
        const there = place(to);
        if (to !== start) area += `L${there}`;
        // a piece between two crossings is of the level itself, any other is where the grid ends
        const ofLevel = from >= count && to >= count;
        if (ofLevel) line += pen ? `L${there}` : `M${here}L${there}`;
        pen = ofLevel;
        [from, here] = [to, there];
      } while (from !== start);
      area += 'Z';
    }
  return { area, line };
};

/** The regions above several values. */
export const levelRegions = (grid: LevelGrid, values: readonly number[]): readonly LevelRegion[] => {
  const cells = wholeCells(grid);
  return values.map((value) => levelRegion(grid, cells, value));
};
