import { AIR_BULK_MODULUS, AIR_DENSITY, complex, decayingRoot, scaled, times } from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';
import { limpFluid, mikiFluid } from '../materials/index.ts';
import type { FluidLayer } from './stack.ts';

/** Density and squared wavenumber of a layer at one frequency. */
export interface LayerFluid {
  readonly density: Complex;
  readonly squared: Complex;
}

/**
 * A cavity layer as a fluid: air with lateral loss ρe = ρ0·(1 − jσc/(ωρ0)), fibrous absorber with a limp frame, or a
 * closed-cell foam as a plain elastic column.
 * @param layer kind and properties
 * @param frequency f, Hz, > 0
 * @returns ρe and k²
 * @validity plane layers, homogeneous
 * @source mikiFluid, limpFluid; lateral loss: method fitted to measured constructions; loss at the edges:
 *   K = K0/(1 − jη), η = rate/ω
 * @example layerFluid(airLayer, 500).density.re // 1.204
 */
export const layerFluid = (layer: FluidLayer, frequency: number): LayerFluid => {
  const omega = 2 * Math.PI * frequency;
  switch (layer.kind) {
    case 'air': {
      const density = complex(AIR_DENSITY, -layer.flowLoss / omega);
      const softness = complex(1 / AIR_BULK_MODULUS, -(layer.edgeRate ?? 0) / (omega * AIR_BULK_MODULUS));
      return { density, squared: scaled(times(density, softness), omega * omega) };
    }
    case 'porous': {
      const fluid =
        layer.bulkDensity === null
          ? mikiFluid(frequency, layer.airflowResistivity)
          : limpFluid(frequency, layer.airflowResistivity, layer.bulkDensity);
      const { re, im } = fluid.wavenumber;
      return { density: fluid.density, squared: complex(re * re - im * im, 2 * re * im) };
    }
    case 'elastic': {
      const share = (layer.density * omega * omega) / (layer.modulus * (1 + layer.lossFactor ** 2));
      return { density: complex(layer.density), squared: complex(share, -share * layer.lossFactor) };
    }
  }
};

/** k of a layer fluid, decaying. */
export const layerWavenumber = (fluid: LayerFluid): Complex => decayingRoot(fluid.squared);
