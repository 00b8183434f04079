import type { VentWayKind } from '../../engine/openings/index.ts';
import type { Project } from '../../project/schema.ts';

/** Which opening is to have a vent, and what the vents of its wall may cost that wall together. */
export interface DesignAsk {
  readonly project: Project;
  readonly opening: string;
  /** dB, > 0 */
  readonly mostCost: number;
}

/** The smallest box with its duct that was found, or the nearest to it; inside sizes in m. */
export interface DesignedBox {
  readonly ductDiameter: number;
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly lining: number;
  readonly partitions: number;
  readonly gap: number;
  /** Pa and m/s at the flow */
  readonly loss: number;
  readonly speed: number;
  /** dB */
  readonly cost: number;
  /** the way that lets most through */
  readonly limit: VentWayKind;
}

export interface DesignFound {
  readonly mostCost: number;
  /** m³/s, through each such vent */
  readonly flow: number;
  /** vents of the same wall that the cost is for together */
  readonly count: number;
  /** true where it costs the wall no more than asked */
  readonly enough: boolean;
  /** what was taken for granted: boards in kg/m², wall in m, and at most these m/s and Pa */
  readonly terms: {
    readonly boards: number;
    readonly wallDepth: number;
    readonly mostSpeed: number;
    readonly mostLoss: number;
  };
  /** null where no duct of the grid carries the air quietly */
  readonly box: DesignedBox | null;
}

/** What the worker says while it looks, and at the end. */
export type DesignNews =
  | { readonly kind: 'progress'; readonly boxes: number }
  | { readonly kind: 'found'; readonly found: DesignFound }
  | { readonly kind: 'fault'; readonly sentence: string };
