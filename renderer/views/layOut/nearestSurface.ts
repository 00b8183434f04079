import type { NetSurface } from '../../drawings/net.ts';

/** The surface that comes next on the sheet in the direction of an arrow: the nearest within that quarter. */
export const nearestSurface = (
  surfaces: readonly NetSurface[],
  from: NetSurface,
  [right, down]: readonly [number, number],
): NetSurface | null => {
  const centre = ({ box }: NetSurface): [number, number] => [box.x + box.width / 2, box.y + box.height / 2];
  const [x, y] = centre(from);
  let best: NetSurface | null = null;
  let least = Infinity;
  for (const surface of surfaces) {
    const [sx, sy] = centre(surface);
    const along = (sx - x) * right + (sy - y) * down;
    const aside = Math.abs((sx - x) * down) + Math.abs((sy - y) * right);
    if (surface === from || along <= 0 || aside > along * 1.05) continue;
    if (along + aside < least) [best, least] = [surface, along + aside];
  }
  return best;
};
