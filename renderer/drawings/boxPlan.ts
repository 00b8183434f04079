import type { VentBox, VentPort } from '../../src/engine/openings/index.ts';
import { sectionArea } from '../../src/engine/quantities/index.ts';
import type { Box } from './section.ts';

/** A rectangle of the plan, m; y from the near side. */
export interface PlanRect {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** From the plan of a box to px and back: near side below, left end left. */
export interface PlanView {
  /** px per m */
  readonly scale: number;
  readonly box: Box;
  screen(rect: PlanRect): Box;
  point(x: number, y: number): { readonly x: number; readonly y: number };
  plan(x: number, y: number): { readonly x: number; readonly y: number };
}

/** Fits a plan into a space. @param scale kept while something is dragged */
export const planView = (size: { length: number; width: number }, space: Box, scale?: number): PlanView => {
  const fitted = scale ?? Math.min(space.width / size.length, space.height / size.width);
  const [width, height] = [size.length * fitted, size.width * fitted];
  const box: Box = { x: space.x + (space.width - width) / 2, y: space.y + (space.height - height) / 2, width, height };
  const bottom = box.y + height;
  return {
    scale: fitted,
    box,
    screen: ({ x0, y0, x1, y1 }) => ({
      x: box.x + x0 * fitted,
      y: bottom - y1 * fitted,
      width: (x1 - x0) * fitted,
      height: (y1 - y0) * fitted,
    }),
    point: (x, y) => ({ x: box.x + x * fitted, y: bottom - y * fitted }),
    plan: (x, y) => ({ x: (x - box.x) / fitted, y: (bottom - y) / fitted }),
  };
};

const liningDepth = (box: VentBox): number => box.lining?.thickness ?? 0;

/** A partition; its gap is clear between its tip and the lining of the side it points at. */
export const partitionRect = (box: VentBox, index: number): PlanRect => {
  const partition = box.partitions[index];
  if (!partition) return { x0: 0, y0: 0, x1: 0, y1: 0 };
  const { at, thickness, gap, side } = partition;
  const open = gap + liningDepth(box);
  return side === 'N'
    ? { x0: at, x1: at + thickness, y0: 0, y1: Math.max(0, box.width - open) }
    : { x0: at, x1: at + thickness, y0: Math.min(box.width, open), y1: box.width };
};

/** Lining on the four edges and on both sides of every partition. */
export const liningRects = (box: VentBox): readonly PlanRect[] => {
  const t = liningDepth(box);
  if (t === 0) return [];
  const { length, width } = box;
  const beside = box.partitions.flatMap((_, index) => {
    const { x0, y0, x1, y1 } = partitionRect(box, index);
    return [
      { x0: Math.max(0, x0 - t), y0, x1: x0, y1 },
      { x0: x1, y0, x1: Math.min(length, x1 + t), y1 },
    ];
  });
  return [
    { x0: 0, y0: 0, x1: length, y1: t },
    { x0: 0, y0: width - t, x1: length, y1: width },
    { x0: 0, y0: t, x1: t, y1: width - t },
    { x0: length - t, y0: t, x1: length, y1: width - t },
    ...beside,
  ];
};

/** How wide a port stands in the plan, m: a duct keeps its area there, not its diameter. */
export const portWidth = (box: VentBox, port: VentPort): number =>
  port.side === 'face' ? Math.sqrt(sectionArea(port.section)) : sectionArea(port.section) / box.height;

/** The hole of a port through edge and lining, or its footprint on the face. */
export const portRect = (box: VentBox, port: VentPort): PlanRect => {
  const half = portWidth(box, port) / 2;
  const t = liningDepth(box);
  const { length, width } = box;
  switch (port.side) {
    case 'W':
      return { x0: 0, x1: t, y0: port.at - half, y1: port.at + half };
    case 'E':
      return { x0: length - t, x1: length, y0: port.at - half, y1: port.at + half };
    case 'S':
      return { x0: port.at - half, x1: port.at + half, y0: 0, y1: t };
    case 'N':
      return { x0: port.at - half, x1: port.at + half, y0: width - t, y1: width };
    case 'face':
      return { x0: port.at - half, x1: port.at + half, y0: port.across - half, y1: port.across + half };
  }
};

/** Middle of a port, on the edge or on the face, m. */
export const portPlace = (box: VentBox, port: VentPort): { readonly x: number; readonly y: number } => {
  if (port.side === 'W' || port.side === 'E') return { x: port.side === 'W' ? 0 : box.length, y: port.at };
  if (port.side === 'face') return { x: port.at, y: port.across };
  return { x: port.at, y: port.side === 'S' ? 0 : box.width };
};
