import type { SheetBox } from './netTurn.ts';

/** A dimension line outside the net: from `from` to `to` along its direction, in row `row` counted outwards. */
export interface Dimension {
  readonly direction: 'across' | 'down';
  readonly from: number;
  readonly to: number;
  readonly row: number;
  /** surfaces that have this measure */
  readonly of: readonly string[];
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

const chain = (
  direction: 'across' | 'down',
  spans: readonly { readonly id: string; readonly from: number; readonly to: number }[],
): Dimension[] => {
  const merged: { from: number; to: number; of: string[] }[] = [];
  for (const { id, from, to } of spans) {
    const same = merged.find((span) => near(span.from, from) && near(span.to, to));
    if (same) same.of.push(id);
    else merged.push({ from, to, of: [id] });
  }
  const ends: number[] = [];
  return merged
    .sort((a, b) => a.from - b.from || b.to - a.to)
    .map((span) => {
      const free = ends.findIndex((end) => end <= span.from + 1e-6);
      const row = free < 0 ? ends.length : free;
      ends[row] = span.to;
      return { direction, row, ...span };
    });
};

/** The chains of dimensions below and left of the net: every side of every surface once. */
export const dimensionsOf = (boxes: readonly (readonly [string, SheetBox])[]): readonly Dimension[] => [
  ...chain(
    'across',
    boxes.map(([id, box]) => ({ id, from: box.x, to: box.x + box.width })),
  ),
  ...chain(
    'down',
    boxes.map(([id, box]) => ({ id, from: box.y, to: box.y + box.height })),
  ),
];
