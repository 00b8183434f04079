import type { VentBox, VentLining, VentPort, VentWall } from '../engine/openings/index.ts';
import type { Section } from '../engine/quantities/index.ts';
import { findMaterial } from './library.ts';
import type { Project } from './schema.ts';
import type { SectionEntry } from './sectionSchema.ts';
import { toAssembly } from './toAssembly.ts';
import { VENT_DEFAULTS, type VentElementEntry } from './ventSchema.ts';

const MILLI = 1e-3;

type Of<K extends VentElementEntry['kind']> = Extract<VentElementEntry, { kind: K }>;

export const toSection = (entry: SectionEntry): Section =>
  entry.shape === 'round'
    ? { shape: 'round', diameter: entry.diameter_mm * MILLI }
    : { shape: 'rectangular', width: entry.width_mm * MILLI, height: entry.height_mm * MILLI };

export const toLining = (project: Project, entry?: { material: string; thickness_mm: number }): VentLining | null => {
  if (!entry) return null;
  const material = findMaterial(project, entry.material);
  if (material?.kind !== 'porous')
    throw new Error(`material ${entry.material} must be porous: check the project first`);
  return { thickness: entry.thickness_mm * MILLI, airflowResistivity: material.flow_resistivity_Pa_s_m2 };
};

export const toWall = (project: Project, entry: Of<'duct' | 'box'>): VentWall => {
  const assembly = entry.casing === undefined ? undefined : project.assemblies[entry.casing];
  const usual = VENT_DEFAULTS.wall_kg_m2[entry.kind === 'box' ? 'box' : entry.type];
  return { assembly: assembly ? toAssembly(assembly, project) : null, surfaceMass: entry.wall_kg_m2 ?? usual };
};

const SIDES = { left: 'W', right: 'E', near: 'S', far: 'N', face: 'face' } as const;

const toPort = (port: Of<'box'>['ports'][number]): VentPort => ({
  side: SIDES[port.side],
  at: port.at_m,
  across: port.across_m ?? 0,
  section: toSection(port.section),
});

/** The inside of a box in SI. */
export const toVentBox = (project: Project, entry: Of<'box'>): VentBox => {
  const [first, second] = entry.ports;
  if (!first || !second) throw new Error('a box must have two ports: check the project first');
  const lining = toLining(project, entry.lining);
  return {
    length: entry.length_m,
    width: entry.width_m,
    height: entry.height_m,
    partitions: entry.partitions.map(({ at_m, gap_mm, side, thickness_mm }) => ({
      at: at_m,
      thickness: (thickness_mm ?? VENT_DEFAULTS.partition_thickness_mm) * MILLI,
      gap: gap_mm * MILLI,
      side: side === 'near' ? 'S' : 'N',
    })),
    lining: lining && { ...lining, faces: entry.lining?.faces ?? false },
    ports: [toPort(first), toPort(second)],
  };
};
