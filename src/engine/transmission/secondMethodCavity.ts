import { SOUND_SPEED, complex, decayingRoot, over, plus, scaled } from '../quantities/index.ts';
import { layerFluid } from './fluidLayer.ts';
import type { FluidLayer } from './stack.ts';

/** What the edges of a cavity absorb of what falls on them. @source engineering judgement: timber, steel, masonry reveals */
const EDGE_ABSORPTION = 0.1;
/** Depth of all layers of a cavity, m. */
export const cavityDepth = (layers: readonly FluidLayer[]): number =>
  layers.reduce((sum, layer) => sum + layer.depth, 0);

/**
 * Loss factor of the cavity's field: what is lost on one free path ℓ = π·S/P of a bay, in the absorber by exp(−2k″ℓ) and
 * at its edges by α: η3 = c0·[1 − (1 − α)·exp(−2k″ℓ)]/(ω·ℓ). More than all of it cannot be lost.
 */
export const cavityLoss = (
  layers: readonly FluidLayer[],
  frequency: number,
  bay: readonly [number, number],
): number => {
  const depth = cavityDepth(layers);
  const omega = 2 * Math.PI * frequency;
  // layers side by side share the pressure: 1/ρ and 1/K are means over the depth
  const sums = layers.reduce(
    (sum, layer) => {
      const lossless: FluidLayer = layer.kind === 'air' ? { ...layer, flowLoss: 0 } : layer;
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
  const freePath = (Math.PI * bay[0] * bay[1]) / (2 * (bay[0] + bay[1]));
  const left = (1 - EDGE_ABSORPTION) * Math.exp(-2 * Math.abs(im) * freePath);
  return (SOUND_SPEED * (1 - left)) / (omega * freePath);
};
