import { bondedPlate, sandwich } from '../../../src/engine/transmission/plateModel.ts';
import type { PlateLayer } from '../../../src/engine/transmission/plateModel.ts';
import { leafCriticalFrequency } from '../../../src/engine/transmission/leafStiffness.ts';
import type { FluidLayer, GapModel, LeafModel, Link, Stack } from '../../../src/engine/transmission/index.ts';

/** The stacks of golden.json as they are written there. */
export interface GoldenLayer {
  readonly mat: string;
  readonly h: number;
  readonly rho: number;
  readonly E: number;
  readonly nu: number;
  readonly eta: number;
  readonly heavy: boolean;
}
export interface GoldenLeaf {
  readonly type: 'leaf';
  readonly layers: readonly GoldenLayer[];
  readonly bond: 'unbonded' | 'bonded' | 'cld';
  readonly core?: {
    readonly h: number;
    readonly G: number;
    readonly eta: number;
    readonly n: number;
    readonly rho: number;
  };
}
export interface GoldenLink {
  readonly type: 'line' | 'line+point';
  readonly b: number;
  readonly s: number;
  readonly C: number;
  readonly fk: number;
  readonly n: number;
  readonly bay: readonly [number, number];
  readonly eta_extra: number;
  readonly kappa: number;
}
export interface GoldenGap {
  readonly type: 'gap';
  readonly layers: readonly {
    readonly type: 'air' | 'porous';
    readonly d: number;
    readonly loss?: number;
    readonly sigma?: number;
    readonly rho_b?: number;
  }[];
  readonly link: GoldenLink | null;
}
export type GoldenPart = GoldenLeaf | GoldenGap;

const plateLayer = (layer: GoldenLayer): PlateLayer => ({
  thickness: layer.h,
  density: layer.rho,
  youngsModulus: layer.E,
  poissonRatio: layer.nu,
  lossFactor: layer.eta,
});

export const goldenLeaf = (part: GoldenLeaf): LeafModel => {
  const layers = part.layers.map(plateLayer);
  const heavy = part.layers.find((layer) => layer.heavy && layer.h >= 0.05);
  const core = part.core;
  const plates =
    part.bond === 'bonded' ? [bondedPlate(layers)] : part.bond === 'cld' ? [] : layers.map((it) => bondedPlate([it]));
  const sandwiches =
    part.bond === 'cld' && core
      ? [
          sandwich(
            layers.map((it) => [it]),
            [
              {
                layer: 0,
                thickness: core.h,
                material: {
                  kind: 'viscoelastic',
                  name: 'core',
                  density: core.rho,
                  shearModulus: core.G,
                  lossFactor: core.eta,
                },
              },
            ],
          ),
        ]
      : [];
  const mass = [...plates, ...sandwiches].reduce((sum, it) => sum + it.mass, 0);
  const model = {
    mass,
    plates,
    sandwiches,
    edgeLoss: part.layers.some((layer) => layer.heavy) ? { kind: 'masonry' as const, atOneHertz: mass / 485 } : null,
    wallImpedance: heavy ? heavy.rho * Math.sqrt(heavy.E / (heavy.rho * (1 - heavy.nu ** 2))) : null,
  };
  return { ...model, criticalFrequency: leafCriticalFrequency(model) };
};

export const goldenLink = (link: GoldenLink): Link => ({
  path: 'links',
  form: link.type === 'line' ? 'line' : 'points',
  spacing: link.b,
  pitch: link.s,
  compliances: [{ compliance: link.C, knee: link.fk, exponent: link.n }],
  bay: link.bay,
  addedLoss: link.eta_extra,
});

const fluid = (layer: GoldenGap['layers'][number]): FluidLayer =>
  layer.type === 'air'
    ? { kind: 'air', depth: layer.d, flowLoss: layer.loss ?? 0 }
    : { kind: 'porous', depth: layer.d, airflowResistivity: layer.sigma ?? 0, bulkDensity: layer.rho_b ?? null };

const goldenGap = (part: GoldenGap): GapModel => ({
  layers: part.layers.map(fluid),
  coupling: part.link
    ? {
        resistance: 0,
        bay: { kappa: part.link.kappa, lossFactor: 0.3, spacing: part.link.b, compliance: part.link.C },
      }
    : null,
  links: part.link ? [goldenLink(part.link)] : [],
});

export const goldenStack = (parts: readonly GoldenPart[]): Stack => {
  const leaves = parts.filter((part) => part.type === 'leaf');
  const last = parts.at(-1);
  const trailing = last?.type === 'gap' ? last.layers.map(fluid) : [];
  const gaps = parts.filter((part, i) => part.type === 'gap' && i < parts.length - 1);
  return {
    leaves: leaves.map(goldenLeaf),
    gaps: gaps.flatMap((part) => (part.type === 'gap' ? [goldenGap(part)] : [])),
    leading: [],
    trailing,
  };
};
