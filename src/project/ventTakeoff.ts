import { boxQuantities, pieceArea, type BoxQuantities } from '../engine/takeoff/index.ts';
import { findMaterial } from './library.ts';
import type { LayerEntry, Project, VentElementEntry, VentEntry } from './schema.ts';
import { toVentBox } from './toVentBox.ts';
import { VENT_DEFAULTS } from './ventSchema.ts';

export { pieceArea };

type BoxEntry = Extract<VentElementEntry, { kind: 'box' }>;

const MILLI = 1e-3;
/** Wood board of which only the mass is told, kg/m³: 12 kg/m² are 18 mm. @source common practice */
const WOOD = VENT_DEFAULTS.wall_kg_m2.box / 0.018;

/** One layer of a box's casing. */
export interface CasingSheet {
  readonly name: string;
  readonly thickness_mm: number;
  readonly kg_m2: number;
  readonly board: boolean;
}

/** What a baffled box of a vent is put together of. */
export interface BoxTakeoff {
  /** place in the vent */
  readonly element: number;
  readonly entry: BoxEntry;
  /** from the inside of the box outwards */
  readonly casing: readonly CasingSheet[];
  /** true where the document tells the casing's mass alone, so that its thickness is that of wood board */
  readonly byMass: boolean;
  /** name and kg/m³ of the lining; null without one */
  readonly lining: { readonly name: string; readonly density: number } | null;
  readonly quantities: BoxQuantities;
  /** kg, with partitions and lining; partitions as dense as the casing's innermost board */
  readonly mass: number;
}

const sheetOf = (project: Project, layer: LayerEntry): CasingSheet => {
  if (layer.kind === 'cavity') return { name: 'Cavity', thickness_mm: layer.depth_mm, kg_m2: 0, board: false };
  const material = findMaterial(project, layer.material);
  return {
    name: material?.name ?? layer.material,
    thickness_mm: layer.thickness_mm,
    kg_m2: (material?.density_kg_m3 ?? 0) * layer.thickness_mm * MILLI,
    board: layer.kind === 'board',
  };
};

/** A make-up is told from the music room outwards: of a box that stands in the room, from its outside. */
const casingOf = (project: Project, entry: BoxEntry): readonly CasingSheet[] => {
  const layers = entry.casing === undefined ? undefined : project.assemblies[entry.casing]?.layers;
  if (layers) {
    const sheets = layers.map((layer) => sheetOf(project, layer));
    return entry.place === 'inside' ? sheets.toReversed() : sheets;
  }
  const kg_m2 = entry.wall_kg_m2 ?? VENT_DEFAULTS.wall_kg_m2.box;
  return [{ name: 'Wood board', thickness_mm: kg_m2 / WOOD / MILLI, kg_m2, board: true }];
};

const liningOf = (project: Project, entry: BoxEntry): BoxTakeoff['lining'] => {
  const material = entry.lining && findMaterial(project, entry.lining.material);
  return material ? { name: material.name, density: material.density_kg_m3 } : null;
};

const takeoffOf = (project: Project, entry: BoxEntry, element: number): BoxTakeoff => {
  const casing = casingOf(project, entry);
  const lining = liningOf(project, entry);
  const quantities = boxQuantities(
    toVentBox(project, entry),
    casing.map(({ thickness_mm, board }) => ({ thickness: thickness_mm * MILLI, board })),
  );
  const { boards, partitions } = quantities;
  const inmost = casing.find(({ board }) => board);
  const density = inmost ? inmost.kg_m2 / (inmost.thickness_mm * MILLI) : WOOD;
  const volume = (pieces: BoxQuantities['lining']): number =>
    pieces.reduce((sum, piece) => sum + pieceArea([piece]) * piece.thickness, 0);
  const mass =
    boards.reduce((sum, piece) => sum + pieceArea([piece]) * (casing[piece.layer ?? 0]?.kg_m2 ?? 0), 0) +
    volume(partitions) * density +
    volume(quantities.lining) * (lining?.density ?? 0);
  return { element, entry, casing, byMass: entry.casing === undefined, lining, quantities, mass };
};

/** The boxes of a vent with what each is put together of. */
export const boxTakeoffs = (project: Project, vent: VentEntry): readonly BoxTakeoff[] =>
  vent.elements.flatMap((entry, element) => (entry.kind === 'box' ? [takeoffOf(project, entry, element)] : []));
