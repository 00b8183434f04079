import { AIR_BULK_MODULUS, SOUND_SPEED } from '../quantities/index.ts';
import type { Cavity } from '../assembly/index.ts';
import type { BoardMaterial } from '../materials/index.ts';
import type { FluidLayer } from './stack.ts';
import { freePath } from './freePath.ts';

/** Lateral loss of an empty cavity, Pa·s/m² per metre of depth: framed or free. */
const LOSS_PER_DEPTH = 6000;

/**
 * How often a wave between two panes is lost on one free path to the edges: 1.35·D/(D + 10 mm). A narrow spacer gives
 * part of it back, the reveals of a deep window hardly any.
 * @source engineering judgement: fitted to measured constructions, tests/reference/tl
 */
const lostAtEdges = (depth: number): number => (1.35 * depth) / (depth + 0.01);

/**
 * Closed-cell foam between leaves: a light elastic column without absorption, as stiff as the air in its cells and its
 * own skeleton together.
 * @source engineering judgement: plane-wave modulus of the board plus K0; no flow resistance
 */
const foam = (material: BoardMaterial, depth: number): FluidLayer => {
  const nu = material.poissonRatio;
  const skeleton = (material.youngsModulus * (1 - nu)) / ((1 + nu) * (1 - 2 * nu));
  return {
    kind: 'elastic',
    depth,
    modulus: AIR_BULK_MODULUS + skeleton,
    lossFactor: (skeleton * Math.max(material.lossFactor, 0.05)) / (AIR_BULK_MODULUS + skeleton),
    density: material.density,
  };
};

/**
 * The layers of a closed cavity: an absorber is spread over the whole depth (σ·t/D, ρ·t/D; a thicker one is compressed
 * by the same rule), foam leaves the rest as empty air. Between twin studs it stands in its own row and leaves the other
 * as air, whose lateral loss shrinks with its share of the depth: code tables give a second filled row 4 dB. A wave in
 * the air between panes is lost as it runs its free path π·S/P to the edges (lostAtEdges): what comes back from there is no
 * longer the wave that the outer pane drives.
 * @param cavity depth and fills
 * @param glazed sides of the panes, m, if both leaves are glass; null otherwise
 * @returns layers from the room outwards
 * @validity plane layers
 * @source free path of a flat cavity: Kosten, Acustica 10 (1960) 245-250 (from memory); the rest engineering judgement:
 *   fitted to measured constructions, tests/reference/tl
 */
export const cavityLayers = (cavity: Cavity, glazed: readonly [number, number] | null): FluidLayer[] => {
  const { depth } = cavity;
  const air = (left: number): FluidLayer =>
    glazed
      ? { kind: 'air', depth: left, flowLoss: 0, edgeRate: (lostAtEdges(left) * SOUND_SPEED) / freePath(glazed) }
      : { kind: 'air', depth: left, flowLoss: LOSS_PER_DEPTH * depth };
  const solids: FluidLayer[] = [];
  let solid = 0;
  let absorber = 0;
  let resistance = 0;
  let mass = 0;
  for (const fill of cavity.fills) {
    if (fill.material.kind === 'porous') {
      resistance += fill.material.airflowResistivity * fill.thickness;
      mass += fill.material.density * fill.thickness;
      absorber += fill.thickness;
    } else {
      const thickness = Math.min(fill.thickness, depth - solid);
      if (thickness > 0) solids.push(foam(fill.material, thickness));
      solid += Math.max(0, thickness);
    }
  }
  const left = depth - solid;
  if (left < 1e-6) return solids;
  const free = left - absorber;
  if (cavity.frame?.arrangement === 'twin' && solids.length === 0 && absorber > 0 && free > 1e-3) {
    // which row is filled is not known: half of the air on either side, so that both directions are alike
    const half: FluidLayer = { kind: 'air', depth: free / 2, flowLoss: LOSS_PER_DEPTH * free * (free / depth) };
    const row: FluidLayer = {
      kind: 'porous',
      depth: absorber,
      airflowResistivity: resistance / absorber,
      bulkDensity: mass / absorber,
    };
    return [half, row, half];
  }
  const rest = (share: number): FluidLayer =>
    resistance > 0
      ? { kind: 'porous', depth: share, airflowResistivity: resistance / left, bulkDensity: mass / left }
      : air(share);
  // which leaf a foam sits on is not known: it stands in the middle, so that both directions are alike
  if (solids.length === 0) return [rest(left)];
  const half = rest(left / 2);
  return [half, ...solids, half];
};

/** Absorber in front of or behind all leaves; the air beyond it belongs to the room. */
export const facingLayers = (cavity: Cavity | null): FluidLayer[] =>
  (cavity?.fills ?? []).flatMap((fill) =>
    fill.material.kind === 'porous'
      ? [
          {
            kind: 'porous' as const,
            depth: fill.thickness,
            airflowResistivity: fill.material.airflowResistivity,
            bulkDensity: fill.material.density,
          },
        ]
      : [foam(fill.material, fill.thickness)],
  );
