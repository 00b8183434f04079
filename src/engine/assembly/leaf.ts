import { isMasonry } from '../materials/index.ts';
import type { ViscoelasticMaterial } from '../materials/index.ts';
import type { Assembly, BoardLayer, CavityLayer, Layer } from './assembly.ts';

/** How two neighbouring boards of a leaf are joined. */
export type Joint =
  'screwed' | 'rigid' | { readonly material: ViscoelasticMaterial; readonly thickness: number; readonly layer: number };

/** Boards in contact: everything that bends together. */
export interface Leaf {
  /** indices of its layers in the assembly */
  readonly layers: readonly number[];
  readonly boards: readonly BoardLayer[];
  /** between boards i and i + 1 */
  readonly joints: readonly Joint[];
  /** kg/m² */
  readonly surfaceMass: number;
  /** m */
  readonly thickness: number;
  readonly masonry: boolean;
  readonly glass: boolean;
}

/** The space between two leaves; cavity layers that touch each other count as one. */
export interface Cavity {
  readonly layers: readonly number[];
  readonly depth: number;
  readonly fills: readonly NonNullable<CavityLayer['fill']>[];
  readonly frame: CavityLayer['frame'];
}

/** An assembly taken apart: leaves in order from the room, `cavities[i]` between leaves i and i + 1. */
export interface Structure {
  readonly leaves: readonly Leaf[];
  readonly cavities: readonly Cavity[];
  /** absorber in front of the first leaf or behind the last */
  readonly leading: Cavity | null;
  readonly trailing: Cavity | null;
}

const layerMass = (layer: Layer): number => {
  if (layer.kind === 'board') return layer.material.density * layer.thickness;
  if (layer.kind === 'interlayer') return layer.material === 'rigid' ? 0 : layer.material.density * layer.thickness;
  return layer.fill ? layer.fill.material.density * layer.fill.thickness : 0;
};

const leafFrom = (layers: readonly Layer[], first: number): Leaf | null => {
  const boards: BoardLayer[] = [];
  const joints: Joint[] = [];
  let pending: Joint = 'screwed';
  layers.forEach((layer, i) => {
    if (layer.kind === 'board') {
      if (boards.length > 0) joints.push(pending);
      boards.push(layer);
      pending = 'screwed';
    } else if (layer.kind === 'interlayer') {
      if (layer.material === 'rigid') pending = 'rigid';
      else if (layer.thickness > 0)
        pending = { material: layer.material, thickness: layer.thickness, layer: first + i };
    }
  });
  if (boards.length === 0) return null;
  return {
    layers: layers.map((_, i) => first + i),
    boards,
    joints,
    surfaceMass: layers.reduce((sum, layer) => sum + layerMass(layer), 0),
    thickness: layers.reduce((sum, layer) => sum + (layer.kind === 'cavity' ? 0 : layer.thickness), 0),
    masonry: boards.some((board) => isMasonry(board.material, board.thickness)),
    glass: boards.every((board) => board.material.family === 'glass'),
  };
};

const cavityFrom = (run: readonly Layer[], first: number): Cavity => {
  const cavities = run.filter((layer) => layer.kind === 'cavity');
  return {
    layers: run.map((_, i) => first + i),
    depth: cavities.reduce((sum, cavity) => sum + cavity.depth, 0),
    fills: cavities.flatMap((cavity) => (cavity.fill ? [cavity.fill] : [])),
    frame: cavities.find((cavity) => cavity.frame)?.frame,
  };
};

/** A membrane without a board between two cavities does not part them. */
const merged = (before: Cavity | null, after: Cavity): Cavity =>
  before === null
    ? after
    : {
        layers: [...before.layers, ...after.layers],
        depth: before.depth + after.depth,
        fills: [...before.fills, ...after.fills],
        frame: before.frame ?? after.frame,
      };

/**
 * Takes an assembly apart into its leaves and the cavities between them.
 * @param assembly layers from the room outwards
 * @returns leaves in order, cavities between them, absorbers left outside
 * @validity an interlayer without boards on both sides counts as mass only
 * @source common practice
 * @example structureOf(wall).leaves.length // 2
 */
export const structureOf = (assembly: Assembly): Structure => {
  const leaves: Leaf[] = [];
  const cavities: Cavity[] = [];
  let leading: Cavity | null = null;
  let open: Cavity | null = null;
  let start = 0;
  while (start < assembly.layers.length) {
    const isCavity = assembly.layers[start]?.kind === 'cavity';
    let end = start + 1;
    while (end < assembly.layers.length && (assembly.layers[end]?.kind === 'cavity') === isCavity) end += 1;
    const run = assembly.layers.slice(start, end);
    if (isCavity) {
      open = merged(open, cavityFrom(run, start));
    } else {
      const leaf = leafFrom(run, start);
      if (leaf) {
        if (leaves.length === 0) leading = open;
        else if (open) cavities.push(open);
        leaves.push(leaf);
        open = null;
      }
    }
    start = end;
  }
  if (leaves.length === 0) return { leaves, cavities, leading: open, trailing: null };
  return { leaves, cavities, leading, trailing: open };
};

/** The leaves of an assembly, in order from the room. @see structureOf */
export const leavesOf = (assembly: Assembly): readonly Leaf[] => structureOf(assembly).leaves;

/**
 * Mass per area of everything but the frame: m' = Σ ρ·h, kg/m².
 * @param assembly layers from the room outwards
 * @returns m', kg/m²
 * @source ISO 12354-1:2017, 4.1
 * @example surfaceMass(singleBoard) // 9
 */
export const surfaceMass = (assembly: Assembly): number =>
  assembly.layers.reduce((sum, layer) => sum + layerMass(layer), 0);

/** Thickness over all, m. @param assembly layers from the room outwards */
export const totalThickness = (assembly: Assembly): number =>
  assembly.layers.reduce((sum, layer) => sum + (layer.kind === 'cavity' ? layer.depth : layer.thickness), 0);
