import type { FlankingEntry } from '../../src/project/schema.ts';
import type { Net } from './net.ts';
import type { SheetBox, SheetPoint } from './netTurn.ts';

/** Where a way round crosses the edge of the surface it goes past, in metres on the sheet. */
export interface FlankingMark {
  readonly id: string;
  readonly from: SheetPoint;
  readonly to: SheetPoint;
  /** unit step from the inside of the room across the edge */
  readonly out: SheetPoint;
}

interface Edge {
  readonly from: SheetPoint;
  readonly to: SheetPoint;
  /** away from the box that it bounds */
  readonly out: SheetPoint;
}

const edgesOf = ({ x, y, width, height }: SheetBox): readonly Edge[] => {
  const [right, below] = [x + width, y + height];
  return [
    { from: { x, y }, to: { x: right, y }, out: { x: 0, y: -1 } },
    { from: { x: right, y }, to: { x: right, y: below }, out: { x: 1, y: 0 } },
    { from: { x, y: below }, to: { x: right, y: below }, out: { x: 0, y: 1 } },
    { from: { x, y }, to: { x, y: below }, out: { x: -1, y: 0 } },
  ];
};

const middleOf = ({ x, y, width, height }: SheetBox): SheetPoint => ({ x: x + width / 2, y: y + height / 2 });

/** How far a point lies from an edge. */
const distance = ({ from, to }: Edge, point: SheetPoint): number => {
  const clamp = (value: number, a: number, b: number): number => Math.min(Math.max(value, a), b);
  return Math.hypot(point.x - clamp(point.x, from.x, to.x), point.y - clamp(point.y, from.y, to.y));
};

const shortened = ({ from, to }: Edge, length: number, shift: number): Pick<Edge, 'from' | 'to'> => {
  const whole = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / whole, (to.y - from.y) / whole];
  const half = Math.min(length, whole) / 2;
  const at = Math.min(Math.max(whole / 2 + shift, half), whole - half);
  return {
    from: { x: from.x + ux * (at - half), y: from.y + uy * (at - half) },
    to: { x: from.x + ux * (at + half), y: from.y + uy * (at + half) },
  };
};

/**
 * Each way round as a stretch of the edge of the surface it goes past: the edge nearest to the surface it runs along,
 * as long as the junction.
 */
export const flankingMarks = (net: Net, flanking: readonly FlankingEntry[]): readonly FlankingMark[] =>
  flanking.flatMap((path): FlankingMark[] => {
    const past = net.surfaces.find(({ entry }) => entry.id === path.past);
    if (!past) return [];
    const along = net.surfaces.find(({ entry }) => entry.id === (path.inside.surface ?? path.beyond.surface));
    const towards = middleOf(along?.box ?? net.middle);
    const edge = edgesOf(past.box).reduce((best, one) =>
      distance(one, towards) < distance(best, towards) - 1e-9 ? one : best,
    );
    return [{ id: path.id, ...shortened(edge, path.length_m, 0), out: { x: 0 - edge.out.x, y: 0 - edge.out.y } }];
  });
