import { complex, decayingRoot, over, plus, scaled } from '../quantities/index.ts';
import { layerFluid } from './fluidLayer.ts';
import { freePath } from './freePath.ts';
import type { FluidLayer } from './stack.ts';

/** What the edges of a cavity absorb of what falls on them. @source engineering judgement: timber, steel, masonry reveals */
const EDGE_ABSORPTION = 0.1;

/** Depth of all layers of a cavity, m. */
export const cavityDepth = (layers: readonly FluidLayer[]): number =>
  layers.reduce((sum, layer) => sum + layer.depth, 0);

/** The field of a cavity. */
export interface CavityField {
  /** share of the energy that is left after one free path, 0 to 1 */
  readonly left: number;
  /** m */
  readonly freePath: number;
}

/**
 * What is left of the field of a cavity after one free path ℓ = π·S/P of a bay: the absorber takes 1 − exp(−2k″ℓ), the edges
 * take α: q = (1 − α)·exp(−2k″ℓ).
 * @param layers of the cavity, side by side as the sound runs along it
 * @param bay width and height of a bay, m
 * @source mean free path of a flat room, Kosten, Acustica 10 (1960) 245-250
 */
export const cavityField = (
  layers: readonly FluidLayer[],
  frequency: number,
  bay: readonly [number, number],
): CavityField => {
  const depth = cavityDepth(layers);
  // layers side by side share the pressure: 1/ρ and 1/K are means over the depth
  const sums = layers.reduce(
    (sum, layer) => {
      const lossless: FluidLayer = layer.kind === 'air' ? { kind: 'air', depth: layer.depth, flowLoss: 0 } : layer;
      const { density, squared } = layerFluid(lossless, frequency);
      const share = layer.depth / depth;
      return {
        flow: plus(sum.flow, scaled(over(complex(1), density), share)),
        spring: plus(sum.spring, scaled(over(squared, density), share)),
      };
    },
    { flow: complex(0), spring: complex(0) },
  );
  const { im } = decayingRoot(over(sums.spring, sums.flow));
  const path = freePath(bay);
  return { left: (1 - EDGE_ABSORPTION) * Math.exp(-2 * Math.abs(im) * path), freePath: path };
};
