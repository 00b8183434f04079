import type { OpeningEntry, SurfaceEntry } from '../../src/project/schema.ts';
import type { SurfacePoint } from './netTurn.ts';

/** An opening on its surface: a rectangle, or for gaps the line they follow; metres, seen from inside. */
export interface PlacedOpening {
  readonly id: string;
  readonly entry: OpeningEntry;
  readonly shape: 'panel' | 'hole' | 'line';
  readonly u: number;
  readonly v: number;
  readonly width: number;
  readonly height: number;
  /** the line a gap follows; empty for panels and holes */
  readonly line: readonly SurfacePoint[];
}

interface Rectangle extends SurfacePoint {
  readonly width: number;
  readonly height: number;
}

export const openingSize = (opening: OpeningEntry): { width: number; height: number } => {
  if (opening.kind === 'slit') return { width: opening.length_mm / 1000, height: opening.width_mm / 1000 };
  if (opening.kind === 'hole') return { width: opening.diameter_mm / 1000, height: opening.diameter_mm / 1000 };
  return { width: opening.width_m, height: opening.height_m };
};

const held = (value: number, most: number): number => Math.min(Math.max(0, value), Math.max(0, most));
const toMillimetre = (value: number): number => Math.round(value * 1000) / 1000;

/** The nearest place at which the opening lies wholly inside its surface; what is too large starts at the corner. */
export const keepInside = (
  surface: { readonly width_m: number; readonly height_m: number },
  size: { readonly width: number; readonly height: number },
  at: SurfacePoint,
): SurfacePoint => ({
  u: toMillimetre(held(at.u, surface.width_m - size.width)),
  v: toMillimetre(held(at.v, surface.height_m - size.height)),
});

/** Openings that nobody has placed stand this far apart, m. */
const APART = 0.1;

const meets = (a: Rectangle, b: Rectangle): boolean =>
  a.u < b.u + b.width + APART - 1e-9 &&
  b.u < a.u + a.width + APART - 1e-9 &&
  a.v < b.v + b.height + APART - 1e-9 &&
  b.v < a.v + a.height + APART - 1e-9;

/** Height above the floor at which such an opening usually sits. */
const usualHeight = (surface: SurfaceEntry, opening: OpeningEntry, height: number): number => {
  if (surface.kind !== 'wall') return (surface.height_m - height) / 2;
  if (opening.kind === 'door') return 0;
  if (opening.kind === 'window') return Math.min(1, surface.height_m - height - 0.1);
  return opening.kind === 'vent' ? surface.height_m - height - 0.2 : 0.3;
};

/** The first free place at its usual height, tried from the middle outwards. */
const freePlace = (surface: SurfaceEntry, opening: OpeningEntry, taken: readonly Rectangle[]): SurfacePoint => {
  const size = openingSize(opening);
  const room = surface.width_m - size.width;
  const usual = { u: room / 2, v: usualHeight(surface, opening, size.height) };
  for (let step = 0; step * 0.1 <= room / 2 + 0.1; step += 1)
    for (const direction of [-1, 1]) {
      const at = keepInside(surface, size, { u: usual.u + direction * step * 0.1, v: usual.v });
      if (!taken.some((other) => meets({ ...at, ...size }, other))) return at;
    }
  return keepInside(surface, size, usual);
};

/** Along the edges of a rectangle from its lower left corner to the right and round, as far as the length goes. */
export const alongEdges = (box: Rectangle, length: number): SurfacePoint[] => {
  const corners: SurfacePoint[] = [
    { u: box.u, v: box.v },
    { u: box.u + box.width, v: box.v },
    { u: box.u + box.width, v: box.v + box.height },
    { u: box.u, v: box.v + box.height },
    { u: box.u, v: box.v },
  ];
  const line: SurfacePoint[] = [];
  let left = length;
  corners.forEach((corner, i) => {
    const before = corners[i - 1];
    if (!before) {
      line.push(corner);
      return;
    }
    const side = Math.hypot(corner.u - before.u, corner.v - before.v);
    if (left <= 1e-9 || side === 0) return;
    const part = Math.min(1, left / side);
    line.push({ u: before.u + part * (corner.u - before.u), v: before.v + part * (corner.v - before.v) });
    left -= side;
  });
  return line;
};

const placeSlit = (surface: SurfaceEntry, slit: OpeningEntry, before: PlacedOpening | undefined): PlacedOpening => {
  const { width: length, height } = openingSize(slit);
  const whole: Rectangle = { u: 0, v: 0, width: surface.width_m, height: surface.height_m };
  const placedByHand = slit.x_m !== undefined || slit.y_m !== undefined;
  const shown = Math.min(length, surface.width_m);
  if (placedByHand) {
    const at = keepInside(surface, { width: shown, height }, { u: slit.x_m ?? 0, v: slit.y_m ?? 0 });
    const line = [at, { u: at.u + shown, v: at.v }];
    return { id: slit.id, entry: slit, shape: 'line', ...at, width: shown, height, line };
  }
  const round = before && length <= 2 * (before.width + before.height) + 0.01 ? before : whole;
  const line = alongEdges(round, length);
  const width = Math.min(length, round.width);
  return { id: slit.id, entry: slit, shape: 'line', u: round.u, v: round.v, width, height, line };
};

/** All openings of a surface in their places: as given where given, else where such openings usually are. */
export const placeOpenings = (surface: SurfaceEntry): readonly PlacedOpening[] => {
  const openings = surface.openings ?? [];
  const placed = new Map<string, PlacedOpening>();
  const put = (opening: OpeningEntry, at: SurfacePoint): void => {
    const shape = opening.kind === 'hole' ? 'hole' : 'panel';
    placed.set(opening.id, { id: opening.id, entry: opening, shape, ...at, ...openingSize(opening), line: [] });
  };
  const solid = openings.filter((opening) => opening.kind !== 'slit');
  const given = (opening: OpeningEntry): boolean => opening.x_m !== undefined && opening.y_m !== undefined;
  for (const it of solid.filter(given))
    put(it, keepInside(surface, openingSize(it), { u: it.x_m ?? 0, v: it.y_m ?? 0 }));
  for (const it of solid.filter((opening) => !given(opening))) {
    const free = freePlace(surface, it, [...placed.values()]);
    put(it, keepInside(surface, openingSize(it), { u: it.x_m ?? free.u, v: it.y_m ?? free.v }));
  }
  openings.forEach((opening, i) => {
    if (opening.kind !== 'slit') return;
    const panelBefore = openings.slice(0, i).findLast((other) => other.kind !== 'slit' && other.kind !== 'hole');
    placed.set(opening.id, placeSlit(surface, opening, panelBefore && placed.get(panelBefore.id)));
  });
  return openings.flatMap((opening) => placed.get(opening.id) ?? []);
};
