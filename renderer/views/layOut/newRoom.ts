import { freshId } from '../../../src/project/freshId.ts';
import { partsOf } from '../../../src/project/parts.ts';
import type { AssemblyEntry, Project, SurfaceEntry } from '../../../src/project/schema.ts';
import { starterMake } from './newPart.ts';

export interface NewSurfaces {
  readonly surfaces: readonly SurfaceEntry[];
  readonly assemblies: Readonly<Record<string, AssemblyEntry>>;
}

interface Wanted {
  readonly name: string;
  readonly kind: SurfaceEntry['kind'];
  readonly width_m: number;
  readonly height_m: number;
  readonly side?: NonNullable<SurfaceEntry['side']>;
}

const made = (project: Project, wanted: readonly Wanted[]): NewSurfaces => {
  const taken = partsOf(project).map((part) => part.id);
  const assemblies: Record<string, AssemblyEntry> = {};
  const surfaces = wanted.map((it): SurfaceEntry => {
    const id = freshId(it.name, taken);
    taken.push(id);
    const make = starterMake(project, it.kind);
    if (make.assembly) assemblies[make.id] = make.assembly;
    return { id, ...it, assembly: make.id };
  });
  return { surfaces, assemblies };
};

/** Four walls, floor and ceiling of a plain room. @param length east to west, m @param depth north to south, m */
export const boxRoom = (project: Project, length: number, depth: number, height: number): NewSurfaces =>
  made(project, [
    { name: 'North wall', kind: 'wall', width_m: length, height_m: height, side: 'north' },
    { name: 'East wall', kind: 'wall', width_m: depth, height_m: height, side: 'east' },
    { name: 'South wall', kind: 'wall', width_m: length, height_m: height, side: 'south' },
    { name: 'West wall', kind: 'wall', width_m: depth, height_m: height, side: 'west' },
    { name: 'Ceiling', kind: 'ceiling', width_m: length, height_m: depth },
    { name: 'Floor', kind: 'floor', width_m: length, height_m: depth },
  ]);

const SIDES = ['north', 'east', 'south', 'west'] as const;
const NAMES = { wall: 'Wall', roof: 'Roof', ceiling: 'Ceiling', floor: 'Floor' } as const;

/** One more surface: the next wall round the room, or a roof, ceiling or floor of the room's size. */
export const oneSurface = (project: Project, kind: SurfaceEntry['kind']): NewSurfaces => {
  const walls = project.surfaces.filter((surface) => surface.kind === 'wall');
  const side = SIDES.find((it) => !walls.some((wall) => wall.side === it));
  const facing = walls.find(
    (wall) =>
      wall.side === (side === 'north' ? 'south' : side === 'south' ? 'north' : side === 'east' ? 'west' : 'east'),
  );
  const length =
    walls.find((wall) => wall.side === 'north' || wall.side === 'south')?.width_m ?? walls[0]?.width_m ?? 4;
  const depth = walls.find((wall) => wall.side === 'east' || wall.side === 'west')?.width_m ?? 3;
  const names = partsOf(project).map((part) => part.name);
  const plain = kind === 'wall' && side ? `${side.charAt(0).toUpperCase()}${side.slice(1)} wall` : NAMES[kind];
  const name = names.includes(plain) ? `${plain} ${names.filter((it) => it.startsWith(plain)).length + 1}` : plain;
  if (kind !== 'wall') return made(project, [{ name, kind, width_m: length, height_m: depth }]);
  const width_m = facing?.width_m ?? (side === 'east' || side === 'west' ? depth : length);
  return made(project, [{ name, kind, width_m, height_m: walls[0]?.height_m ?? 2.4, ...(side ? { side } : {}) }]);
};
