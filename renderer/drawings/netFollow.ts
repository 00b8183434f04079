import type { SurfaceEntry } from '../../src/project/schema.ts';
import type { Dimension } from './netDimensions.ts';
import type { Net, NetSurface } from './net.ts';

/** Which of the room's three measures a side of a surface is. */
export type RoomMeasure = 'length' | 'depth' | 'height';
type Size = 'width_m' | 'height_m';

export interface MeasuredSide {
  readonly surface: string;
  readonly name: string;
  readonly size: Size;
}

const measureOf = ({ entry, lie }: NetSurface, size: Size): RoomMeasure => {
  if (entry.kind !== 'wall') return size === 'width_m' ? 'length' : 'depth';
  if (size === 'height_m') return 'height';
  return lie.turn % 2 === 0 ? 'length' : 'depth';
};

const SIZES: readonly Size[] = ['width_m', 'height_m'];
const same = (a: number, b: number): boolean => Math.abs(a - b) < 0.0015;

const sidesOf = (net: Net, measure: RoomMeasure, value: number): readonly MeasuredSide[] =>
  net.surfaces.flatMap((surface) =>
    SIZES.filter((size) => measureOf(surface, size) === measure && same(surface.entry[size], value)).map((size) => ({
      surface: surface.entry.id,
      name: surface.entry.name,
      size,
    })),
  );

/** Every side that a dimension line stands for: those it touches and all others of the same measure of the room. */
export const sidesOfDimension = (net: Net, dimension: Dimension): readonly MeasuredSide[] => {
  const first = net.surfaces.find((surface) => surface.entry.id === dimension.of[0]);
  if (!first) return [];
  const upright = first.lie.turn % 2 === 0;
  const size: Size = (dimension.direction === 'across') === upright ? 'width_m' : 'height_m';
  return sidesOf(net, measureOf(first, size), first.entry[size]);
};

/** The new sizes of surfaces when all these sides become as long as the value (m). */
export const resized = (
  sides: readonly MeasuredSide[],
  value: number,
): readonly { readonly surface: string; readonly patch: Partial<Pick<SurfaceEntry, Size>> }[] => {
  const ids = [...new Set(sides.map((side) => side.surface))];
  return ids.map((surface) => ({
    surface,
    patch: Object.fromEntries(sides.filter((side) => side.surface === surface).map(({ size }) => [size, value])),
  }));
};
