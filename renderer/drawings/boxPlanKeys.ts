import type { VentBox } from '../../src/engine/openings/index.ts';
import { partitionRect, portPlace } from './boxPlan.ts';
import { pulledBox, type PlanGrip } from './boxPlanMoves.ts';

/** By a key alone, and with Shift, m. */
const STEP = 0.005;
const LONG_STEP = 0.05;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/**
 * Where what is held stands now, so that it does not jump to the pointer, m.
 * @param at stands in for the direction in which it cannot be moved
 */
export const gripPlace = (
  box: VentBox,
  grip: PlanGrip,
  at: { readonly x: number; readonly y: number },
): { readonly x: number; readonly y: number } => {
  if (grip.what === 'length') return { x: box.length, y: at.y };
  if (grip.what === 'width') return { x: at.x, y: box.width };
  if (grip.what === 'port') return portPlace(box, box.ports[grip.index]);
  const { x0, x1, y0, y1 } = partitionRect(box, grip.index);
  return { x: (x0 + x1) / 2, y: box.partitions[grip.index]?.side === 'N' ? y1 : y0 };
};

const withoutPartition = (box: VentBox, index: number): VentBox => ({
  ...box,
  partitions: box.partitions.filter((_, i) => i !== index),
});

const turned = (box: VentBox, index: number): VentBox => ({
  ...box,
  partitions: box.partitions.map((it, i) => (i === index ? { ...it, side: it.side === 'N' ? 'S' : 'N' } : it)),
});

/**
 * The box after a key on one of its parts: arrows move it (up and down the tip of a partition), Enter turns a partition
 * to the other side, Delete removes it.
 * @returns null for a key that means nothing there
 */
export const keyedBox = (box: VentBox, grip: PlanGrip, key: string, shift: boolean): VentBox | null => {
  const arrow = ARROWS[key];
  if (arrow) {
    const [dx, dy] = arrow;
    const moved: PlanGrip = grip.what === 'partition' && dy !== 0 ? { what: 'tip', index: grip.index } : grip;
    const step = shift ? LONG_STEP : STEP;
    const { x, y } = gripPlace(box, moved, { x: 0, y: 0 });
    return pulledBox(box, moved, x + dx * step, y + dy * step);
  }
  if (grip.what !== 'partition') return null;
  if (key === 'Delete') return withoutPartition(box, grip.index);
  return key === 'Enter' || key === ' ' ? turned(box, grip.index) : null;
};
