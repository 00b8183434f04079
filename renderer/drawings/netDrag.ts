import type { SurfaceEntry } from '../../src/project/schema.ts';
import { keepInside, type PlacedOpening } from './netOpenings.ts';
import type { SurfacePoint } from './netTurn.ts';

/** Which edges a handle carries: 0 the left or lower one, 1 the right or upper one, null neither. */
export interface Handle {
  readonly across: 0 | 1 | null;
  readonly up: 0 | 1 | null;
}

/** Handles of an opening: corners of a panel, ends of a placed gap, none on a hole. */
export const handlesOf = (opening: PlacedOpening): readonly Handle[] => {
  if (opening.shape === 'hole') return [];
  if (opening.shape === 'line') return [0, 1].map((across) => ({ across: across as 0 | 1, up: null }));
  return [
    { across: 0, up: 0 },
    { across: 1, up: 0 },
    { across: 1, up: 1 },
    { across: 0, up: 1 },
  ];
};

export const handleAt = (opening: PlacedOpening, handle: Handle): SurfacePoint => ({
  u: opening.u + (handle.across ?? 0.5) * opening.width,
  v: opening.v + (handle.up ?? 0.5) * (opening.shape === 'line' ? 0 : opening.height),
});

const LEAST = 0.02;
const snapped = (value: number): number => Math.round(value * 100) / 100;
const between = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/** Where an opening comes to lie when it is pushed by (du, dv): on whole centimetres, inside its surface. */
export const movedBy = (
  surface: SurfaceEntry,
  opening: PlacedOpening,
  du: number,
  dv: number,
  snap = true,
): { x_m: number; y_m: number } => {
  const at = { u: opening.u + du, v: opening.v + dv };
  const size = opening.shape === 'line' ? { width: opening.width, height: 0 } : opening;
  const { u, v } = keepInside(surface, size, snap ? { u: snapped(at.u), v: snapped(at.v) } : at);
  return { x_m: u, y_m: v };
};

/** Gaps along the edges of a door or window: they go with it when it is moved. */
export const gapsOf = (opening: PlacedOpening, others: readonly PlacedOpening[]): readonly PlacedOpening[] => {
  const slack = 0.02;
  return opening.shape !== 'panel'
    ? []
    : others.filter(
        (gap) =>
          gap.shape === 'line' &&
          gap.line.every(
            ({ u, v }) =>
              u >= opening.u - slack &&
              u <= opening.u + opening.width + slack &&
              v >= opening.v - slack &&
              v <= opening.v + opening.height + slack,
          ),
      );
};

/** Places of an opening and of the gaps along its edges after a push; gaps that nobody has placed follow by themselves. */
export const movedWithGaps = (
  surface: SurfaceEntry,
  opening: PlacedOpening,
  gaps: readonly PlacedOpening[],
  du: number,
  dv: number,
  snap = true,
): readonly { readonly opening: string; readonly x_m: number; readonly y_m: number }[] => {
  const at = movedBy(surface, opening, du, dv, snap);
  const by = { u: at.x_m - opening.u, v: at.y_m - opening.v };
  const placed = gaps.filter((gap) => gap.entry.x_m !== undefined || gap.entry.y_m !== undefined);
  return [
    { opening: opening.id, ...at },
    ...placed.map((gap) => ({ opening: gap.id, ...movedBy(surface, gap, by.u, by.v, false) })),
  ];
};

const stretched = (start: number, size: number, edge: 0 | 1 | null, by: number, most: number): [number, number] => {
  if (edge === null) return [start, size];
  const end = start + size;
  if (edge === 1) {
    const moved = between(snapped(end + by), start + LEAST, most);
    return [start, moved - start];
  }
  const moved = between(snapped(start + by), 0, end - LEAST);
  return [moved, end - moved];
};

const tidy = (value: number): number => Number(value.toFixed(3));

/** Place and size of an opening whose handle is pulled by (du, dv), as the keys of its entry. */
export const pulledBy = (
  surface: SurfaceEntry,
  opening: PlacedOpening,
  handle: Handle,
  du: number,
  dv: number,
): { x_m: number; y_m: number } & ({ width_m: number; height_m: number } | { length_mm: number }) => {
  const [x, width] = stretched(opening.u, opening.width, handle.across, du, surface.width_m);
  if (opening.shape === 'line') return { x_m: tidy(x), y_m: tidy(opening.v), length_mm: Math.round(width * 1000) };
  const [y, height] = stretched(opening.v, opening.height, handle.up, dv, surface.height_m);
  return { x_m: tidy(x), y_m: tidy(y), width_m: tidy(width), height_m: tidy(height) };
};
