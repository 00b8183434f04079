import type { SurfaceEntry } from '../../src/project/schema.ts';
import { around, lieBox, type Lie, type SheetBox, type Turn } from './netTurn.ts';

export type Side = 'north' | 'east' | 'south' | 'west';
export const SIDES: readonly Side[] = ['north', 'east', 'south', 'west'];

export interface Folded {
  readonly lies: Readonly<Record<string, Lie>>;
  /** the floor, or the place the walls leave for one */
  readonly middle: SheetBox;
  readonly hasFloor: boolean;
}

/** Walls by side: as given; the others north, east, south, west in document order, further ones added to the runs. */
export const wallsBySide = (surfaces: readonly SurfaceEntry[]): Readonly<Record<Side, readonly SurfaceEntry[]>> => {
  const runs: Record<Side, SurfaceEntry[]> = { north: [], east: [], south: [], west: [] };
  const walls = surfaces.filter((surface) => surface.kind === 'wall');
  for (const wall of walls) if (wall.side) runs[wall.side].push(wall);
  for (const wall of walls.filter((wall) => !wall.side)) {
    const shortest = [...SIDES].sort((a, b) => runs[a].length - runs[b].length)[0] ?? 'north';
    runs[shortest].push(wall);
  }
  return runs;
};

const runLength = (run: readonly SurfaceEntry[]): number => run.reduce((sum, wall) => sum + wall.width_m, 0);
const tallest = (run: readonly SurfaceEntry[]): number => Math.max(0, ...run.map((wall) => wall.height_m));

/** Each run starts at its corner of the middle, seen from inside at its left: so no two runs can meet. */
const foldRun = (run: readonly SurfaceEntry[], side: Side, middle: SheetBox): [string, Lie][] => {
  const turn = SIDES.indexOf(side) as Turn;
  let along = 0;
  return run.map((wall) => {
    const start = along;
    along += wall.width_m;
    const size = { width: wall.width_m, height: wall.height_m, turn };
    if (side === 'north') return [wall.id, { ...size, x: start, y: 0 }];
    if (side === 'east') return [wall.id, { ...size, x: middle.width, y: start }];
    if (side === 'south') return [wall.id, { ...size, x: middle.width - start, y: middle.height }];
    return [wall.id, { ...size, x: 0, y: middle.height - start }];
  });
};

const foldFloors = (floors: readonly SurfaceEntry[]): [string, Lie][] => {
  let x = 0;
  const deepest = tallest(floors);
  return floors.map((floor) => {
    const lie: Lie = { x, y: deepest, width: floor.width_m, height: floor.height_m, turn: 0 };
    x += floor.width_m;
    return [floor.id, lie];
  });
};

type Roofs = readonly SurfaceEntry[];
const roofLie = (roof: SurfaceEntry, x: number, bottom: number): [string, Lie] => [
  roof.id,
  { x, y: bottom, width: roof.width_m, height: roof.height_m, turn: 0 },
];

/** One below the other beyond the east wall, the first one highest, level with the middle. */
const beyondEast = (roofs: Roofs, walls: SheetBox, middle: SheetBox, gap: number): [string, Lie][] => {
  let y = Math.max(walls.y, (middle.height - roofs.reduce((sum, roof) => sum + roof.height_m, 0)) / 2);
  return roofs.map((roof) => {
    y += roof.height_m;
    return roofLie(roof, walls.x + walls.width + gap, y);
  });
};

/** One above the other beyond the north wall. */
const beyondNorth = (roofs: Roofs, walls: SheetBox, gap: number): [string, Lie][] => {
  let y = walls.y - gap;
  return roofs.map((roof) => {
    const bottom = y;
    y -= roof.height_m;
    return roofLie(roof, 0, bottom);
  });
};

/** Slopes in turn beyond the north and the south wall, as they meet at the eaves. */
const atBothEaves = (roofs: Roofs, walls: SheetBox, middle: SheetBox, gap: number): [string, Lie][] => {
  const even = roofs.filter((_, i) => i % 2 === 0);
  const odd = roofs.filter((_, i) => i % 2 === 1);
  let y = walls.y + walls.height + gap;
  const south = odd.map((roof): [string, Lie] => {
    const top = y;
    y += roof.height_m;
    return [roof.id, { x: middle.width, y: top, width: roof.width_m, height: roof.height_m, turn: 2 }];
  });
  return [...beyondNorth(even, walls, gap), ...south];
};

/** Space left between a roof and the walls, m. */
export const ROOF_GAP = 0.4;

/**
 * The room as an unfolded net: floor in the middle, walls folded out by their sides with north up, roof or ceiling
 * where the whole is largest on an area of the given proportion.
 * @param aspect width over height of the area to be filled
 */
export const foldOut = (surfaces: readonly SurfaceEntry[], aspect = 3 / 2): Folded => {
  const runs = wallsBySide(surfaces);
  const floors = surfaces.filter((surface) => surface.kind === 'floor');
  const longest = (a: Side, b: Side): number => Math.max(runLength(runs[a]), runLength(runs[b]));
  const across = longest('north', 'south') || longest('east', 'west') || 4;
  const middle: SheetBox = {
    x: 0,
    y: 0,
    width: floors.length > 0 ? runLength(floors) : across,
    height: floors.length > 0 ? tallest(floors) : longest('east', 'west') || across,
  };
  const base = [...foldFloors(floors), ...SIDES.flatMap((side) => foldRun(runs[side], side, middle))];
  const walls = around([middle, ...base.map(([, lie]) => lieBox(lie))]) ?? middle;
  const roofs = surfaces.filter((surface) => surface.kind === 'roof' || surface.kind === 'ceiling');
  const size = (lies: readonly [string, Lie][]): number => {
    const box = around([walls, ...lies.map(([, lie]) => lieBox(lie))]) ?? walls;
    return Math.max(box.width, box.height * aspect);
  };
  const places = [
    beyondEast(roofs, walls, middle, ROOF_GAP),
    beyondNorth(roofs, walls, ROOF_GAP),
    atBothEaves(roofs, walls, middle, ROOF_GAP),
  ];
  const best = places.reduce((least, place) => (size(place) < size(least) - 1e-9 ? place : least));
  return { lies: Object.fromEntries([...base, ...best]), middle, hasFloor: floors.length > 0 };
};
