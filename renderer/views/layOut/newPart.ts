import { freshId } from '../../../src/project/freshId.ts';
import { isPanel, partsOf } from '../../../src/project/parts.ts';
import {
  ORDINARY_SEALS,
  type AssemblyEntry,
  type MeasuredEntry,
  type OpeningEntry,
  type Project,
  type SurfaceEntry,
} from '../../../src/project/schema.ts';
import { keepInside, openingSize } from '../../drawings/netOpenings.ts';
import type { SurfacePoint } from '../../drawings/netTurn.ts';
import { isServiceStart, SERVICE_STARTS, type ServiceStart } from './fittings/serviceWords.ts';

export type OpeningKind = OpeningEntry['kind'];

/** What the Add menus offer: the kinds of openings, services by what is led through. */
export type OpeningStart = OpeningKind | ServiceStart;

export const OPENING_KINDS: readonly { readonly kind: OpeningStart; readonly label: string }[] = [
  { kind: 'door', label: 'Door' },
  { kind: 'window', label: 'Window' },
  { kind: 'vent', label: 'Vent' },
  { kind: 'slit', label: 'Gap' },
  { kind: 'hole', label: 'Hole' },
  ...Object.entries(SERVICE_STARTS).map(([kind, { label }]) => ({ kind: kind as ServiceStart, label })),
  { kind: 'service', label: 'Other service, open' },
];

/** A make-up that a new part starts from, with the id under which the project gets it where it lacks one. */
export interface StarterMake {
  readonly id: string;
  readonly assembly: AssemblyEntry | null;
}

const board = (material: string, thickness_mm: number): AssemblyEntry['layers'][number] => ({
  kind: 'board',
  material,
  thickness_mm,
});
const STARTERS: Readonly<Record<string, AssemblyEntry>> = {
  wall: { name: 'Dense block wall, 140 mm', layers: [board('block-dense', 140)] },
  roof: {
    name: 'Plasterboard under boards',
    layers: [board('plasterboard-standard', 12.5), { kind: 'cavity', depth_mm: 150 }, board('osb', 18)],
  },
  floor: { name: 'Concrete slab, 150 mm', layers: [board('concrete', 150)] },
  door: { name: 'Solid door leaf, 44 mm', layers: [board('door-solid-core', 44)] },
  window: {
    name: 'Double glazing 4/16/4',
    layers: [board('glass', 4), { kind: 'cavity', depth_mm: 16 }, board('glass', 4)],
  },
};

const usedBy = (project: Project, kind: string): string | undefined =>
  partsOf(project)
    .filter(isPanel)
    .findLast((part) => part.kind === kind && part.assembly !== undefined)?.assembly;

/** What a new part of this kind is made of: as the last of its kind, else a plain start. */
export const starterMake = (project: Project, kind: string): StarterMake => {
  const used = usedBy(project, kind);
  if (used !== undefined) return { id: used, assembly: null };
  const assembly = STARTERS[kind === 'ceiling' ? 'roof' : kind] ?? STARTERS['wall'] ?? { name: 'Wall', layers: [] };
  const same = Object.entries(project.assemblies).find(([, entry]) => entry.name === assembly.name);
  if (same) return { id: same[0], assembly: null };
  return { id: freshId(assembly.name, Object.keys(project.assemblies)), assembly };
};

/** A vent or service opening counts as open until its test report is given. */
const OPEN: MeasuredEntry = {
  bands_Hz: [
    50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000,
  ],
  R_dB: Array.from({ length: 21 }, () => 0),
  source: 'Taken as open: no test report given yet',
};

const SIZES = { door: [0.9, 2], window: [1, 1], vent: [0.2, 0.2], service: [0.15, 0.15] } as const;

const numbered = (project: Project, name: string): string => {
  const names = partsOf(project).map((part) => part.name);
  if (!names.includes(name)) return name;
  for (let count = 2; ; count += 1) if (!names.includes(`${name} ${count}`)) return `${name} ${count}`;
};

const surround = (surface: SurfaceEntry): number => (surface.kind === 'wall' ? 150 : 200);

/** Thickness of a usual door leaf, mm. */
const DOOR_DEPTH = 44;

/** Side of the piece of wall that a service stands for, m. */
const SERVICE_SIDE = 0.2;

/** What a service stands in: the wall round it, or a plain start where that is known by a curve only. */
const wallMake = (project: Project, surface: SurfaceEntry): StarterMake =>
  surface.assembly === undefined ? starterMake(project, surface.kind) : { id: surface.assembly, assembly: null };

/** The make-up that a new opening starts from; null for one that has none. */
export const openingMake = (project: Project, surface: SurfaceEntry, start: OpeningStart): StarterMake | null => {
  if (isServiceStart(start)) return wallMake(project, surface);
  return start === 'door' || start === 'window' ? starterMake(project, start) : null;
};

const shapeOf = (project: Project, surface: SurfaceEntry, kind: OpeningStart): OpeningEntry => {
  const label =
    kind === 'service' ? 'Service opening' : (OPENING_KINDS.find((it) => it.kind === kind)?.label ?? 'Opening');
  const name = numbered(project, label);
  const id = freshId(
    name,
    partsOf(project).map((part) => part.id),
  );
  if (kind === 'slit') {
    const door = (surface.openings ?? []).findLast((it) => it.kind === 'door');
    const length = door && 'width_m' in door ? door.width_m : Math.min(1, surface.width_m);
    const depth_mm = door ? DOOR_DEPTH : surround(surface);
    return { id, name, kind, length_mm: Math.round(length * 1000), width_mm: 3, depth_mm, edge: true };
  }
  if (kind === 'hole') return { id, name, kind, diameter_mm: 20, depth_mm: surround(surface) };
  if (isServiceStart(kind)) {
    const size = {
      width_m: Math.min(SERVICE_SIDE, surface.width_m / 2),
      height_m: Math.min(SERVICE_SIDE, surface.height_m / 2),
    };
    const assembly = wallMake(project, surface).id;
    return { id, name, kind: 'service', ...size, assembly, items: [SERVICE_STARTS[kind].item] };
  }
  const [width, height] = SIZES[kind];
  const size = { width_m: Math.min(width, surface.width_m), height_m: Math.min(height, surface.height_m) };
  if (kind === 'vent' || kind === 'service') return { id, name, kind, ...size, measured: OPEN };
  const seals = kind === 'door' ? { seals: ORDINARY_SEALS } : {};
  return { id, name, kind, ...size, assembly: starterMake(project, kind).id, ...seals };
};

/** A new opening of usual size, where the surface was pressed or where such openings usually are. */
export const newOpening = (
  project: Project,
  surface: SurfaceEntry,
  kind: OpeningStart,
  at: SurfacePoint | null,
): OpeningEntry => {
  const opening = shapeOf(project, surface, kind);
  if (!at) return opening;
  const size = openingSize(opening);
  const centre = {
    u: at.u - size.width / 2,
    v: kind === 'door' && surface.kind === 'wall' ? 0 : at.v - size.height / 2,
  };
  const { u, v } = keepInside(surface, size, {
    u: Math.round(centre.u * 100) / 100,
    v: Math.round(centre.v * 100) / 100,
  });
  const inTheMiddle = opening.kind === 'slit' && v > 0;
  return { ...opening, ...(inTheMiddle ? { edge: false } : {}), x_m: u, y_m: v };
};
