import type { VentBox, VentPort } from '../../src/engine/openings/index.ts';
import { portWidth } from './boxPlan.ts';

/** What of a box can be taken hold of. */
export type PlanGrip =
  | { readonly what: 'partition'; readonly index: number }
  | { readonly what: 'tip'; readonly index: number }
  | { readonly what: 'port'; readonly index: 0 | 1 }
  | { readonly what: 'length' }
  | { readonly what: 'width' };

/** Dragged figures come to lie on whole steps, m. */
const STEP = 0.005;
/** Air left free beside boards and linings, m. */
const LEAST_WAY = 0.02;

const snapped = (value: number, step = STEP): number => Number((Math.round(value / step) * step).toFixed(4));
const between = (value: number, least: number, most: number): number =>
  Math.min(Math.max(value, least), Math.max(least, most));

/** Where a partition may stand: between its neighbours, each with its lining and some air. */
const placeOf = (box: VentBox, index: number, at: number): number => {
  const t = box.lining?.thickness ?? 0;
  const partition = box.partitions[index];
  const [before, after] = [box.partitions[index - 1], box.partitions[index + 1]];
  const least = before ? before.at + before.thickness + 2 * t + LEAST_WAY : 2 * t + LEAST_WAY;
  const most = (after?.at ?? box.length) - (partition?.thickness ?? 0) - 2 * t - LEAST_WAY;
  return between(snapped(at), least, most);
};

const gapOf = (box: VentBox, gap: number): number =>
  between(snapped(gap), LEAST_WAY, box.width - 2 * (box.lining?.thickness ?? 0) - LEAST_WAY);

/** The side of the plan that lies nearest to a place. */
const nearestSide = ({ length, width }: VentBox, x: number, y: number): Exclude<VentPort['side'], 'face'> => {
  const sides = [
    ['W', Math.abs(x)],
    ['E', Math.abs(length - x)],
    ['S', Math.abs(y)],
    ['N', Math.abs(width - y)],
  ] as const;
  return sides.reduce((best, side) => (side[1] < best[1] ? side : best))[0];
};

const portAt = (box: VentBox, port: VentPort, x: number, y: number): VentPort => {
  const half = portWidth(box, port) / 2;
  const along = (value: number, edge: number): number => between(snapped(value), half, edge - half);
  if (port.side === 'face') return { ...port, at: along(x, box.length), across: along(y, box.width) };
  const side = nearestSide(box, x, y);
  const upright = side === 'W' || side === 'E';
  return { ...port, side, at: along(upright ? y : x, upright ? box.width : box.length) };
};

/** The box with what is held brought to a place of the plan, as far as it can go. @param x, y m */
export const pulledBox = (box: VentBox, grip: PlanGrip, x: number, y: number): VentBox => {
  switch (grip.what) {
    case 'partition':
      return withPartition(box, grip.index, (it) => ({ ...it, at: placeOf(box, grip.index, x - it.thickness / 2) }));
    case 'tip': {
      const t = box.lining?.thickness ?? 0;
      return withPartition(box, grip.index, (it) => ({
        ...it,
        gap: gapOf(box, (it.side === 'N' ? box.width - y : y) - t),
      }));
    }
    case 'port': {
      const [first, second] = box.ports;
      return grip.index === 0
        ? { ...box, ports: [portAt(box, first, x, y), second] }
        : { ...box, ports: [first, portAt(box, second, x, y)] };
    }
    case 'length':
      return resizedBox(box, 'length', x);
    case 'width':
      return resizedBox(box, 'width', y);
  }
};

const withPartition = (
  box: VentBox,
  index: number,
  change: (it: VentBox['partitions'][number]) => VentBox['partitions'][number],
): VentBox => ({ ...box, partitions: box.partitions.map((it, i) => (i === index ? change(it) : it)) });

/** The box longer or wider; its partitions keep their share of the length, ports on the far side follow it. */
export const resizedBox = (box: VentBox, which: 'length' | 'width', size: number): VentBox => {
  const next = between(snapped(size), 0.1, which === 'length' ? 6 : 3);
  const share = next / box[which];
  const along = (port: VentPort): boolean =>
    port.side === 'face' || (which === 'length') === (port.side === 'S' || port.side === 'N');
  const portOf = (port: VentPort): VentPort => {
    if (port.side === 'face')
      return which === 'length' ? { ...port, at: port.at * share } : { ...port, across: port.across * share };
    return along(port) ? { ...port, at: snapped(port.at * share, 0.001) } : port;
  };
  const [first, second] = box.ports;
  const partitions =
    which === 'length'
      ? box.partitions.map((it) => ({
          ...it,
          at: snapped((it.at + it.thickness / 2) * share - it.thickness / 2, 0.001),
        }))
      : box.partitions;
  return { ...box, [which]: next, partitions, ports: [portOf(first), portOf(second)] };
};
