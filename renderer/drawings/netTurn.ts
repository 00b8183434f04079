/** Metres on the sheet: x to the right, y down, the origin at the north-west corner of the floor. */
export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}
/** Metres on a surface seen from inside: u to the right, v up, from its lower left corner. */
export interface SurfacePoint {
  readonly u: number;
  readonly v: number;
}
export interface SheetBox extends SheetPoint {
  readonly width: number;
  readonly height: number;
}

/** Quarter turns clockwise by which a surface lies on the sheet. */
export type Turn = 0 | 1 | 2 | 3;

/** Where a surface lies: the sheet point of its lower left corner seen from inside, and its turn. */
export interface Lie extends SheetPoint {
  readonly turn: Turn;
  readonly width: number;
  readonly height: number;
}

type Axes = readonly [ux: number, uy: number, vx: number, vy: number];
const AXES: Readonly<Record<Turn, Axes>> = {
  0: [1, 0, 0, -1],
  1: [0, 1, 1, 0],
  2: [-1, 0, 0, 1],
  3: [0, -1, -1, 0],
};

export const toSheet = (lie: Lie, { u, v }: SurfacePoint): SheetPoint => {
  const [ux, uy, vx, vy] = AXES[lie.turn];
  return { x: lie.x + u * ux + v * vx, y: lie.y + u * uy + v * vy };
};

export const toSurface = (lie: Lie, { x, y }: SheetPoint): SurfacePoint => {
  const [ux, uy, vx, vy] = AXES[lie.turn];
  const dx = x - lie.x;
  const dy = y - lie.y;
  return { u: dx * ux + dy * uy, v: dx * vx + dy * vy };
};

/** The same arrow key means the same direction on the sheet, whatever the turn: a step on the sheet as one on the surface. */
export const stepOnSurface = (lie: Lie, dx: number, dy: number): SurfacePoint =>
  toSurface({ ...lie, x: 0, y: 0 }, { x: dx, y: dy });

/** The upright box on the sheet that a rectangle of the surface covers. */
export const boxOnSheet = (lie: Lie, corner: SurfacePoint, width: number, height: number): SheetBox => {
  const a = toSheet(lie, corner);
  const b = toSheet(lie, { u: corner.u + width, v: corner.v + height });
  const across = lie.turn % 2 === 0;
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    width: across ? width : height,
    height: across ? height : width,
  };
};

export const lieBox = (lie: Lie): SheetBox => boxOnSheet(lie, { u: 0, v: 0 }, lie.width, lie.height);

/** How far two boxes lie over each other, m² (0 where they only touch). */
export const overlap = (a: SheetBox, b: SheetBox): number =>
  Math.max(0, Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)) *
  Math.max(0, Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y));

/** The least box around all; null around nothing. */
export const around = (boxes: readonly SheetBox[]): SheetBox | null => {
  if (boxes.length === 0) return null;
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  const right = Math.max(...boxes.map((box) => box.x + box.width));
  const bottom = Math.max(...boxes.map((box) => box.y + box.height));
  return { x, y, width: right - x, height: bottom - y };
};
