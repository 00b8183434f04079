import type { PlacedOpening } from './netOpenings.ts';
import type { SurfacePoint } from './netTurn.ts';

/** Lines inside an opening that say what it is, as on an elevation. */
export interface OpeningSign {
  readonly points: readonly SurfacePoint[];
  readonly dashed: boolean;
}

/** Door: dashed lines that meet at the hinges; window: frame and panes; vent: blades; service: a cross. */
export const openingSigns = (opening: PlacedOpening): readonly OpeningSign[] => {
  const { u, v, width: w, height: h } = opening;
  const at = (a: number, b: number): SurfacePoint => ({ u: u + a * w, v: v + b * h });
  const solid = (...points: SurfacePoint[]): OpeningSign => ({ points, dashed: false });
  switch (opening.entry.kind) {
    case 'door':
      return [{ points: [at(1, 0), at(0, 0.5), at(1, 1)], dashed: true }];
    case 'window': {
      const inset = Math.min(0.06, w / 8, h / 8);
      const [a, b] = [inset / w, inset / h];
      return [
        solid(at(a, b), at(1 - a, b), at(1 - a, 1 - b), at(a, 1 - b), at(a, b)),
        solid(at(0.5, b), at(0.5, 1 - b)),
      ];
    }
    case 'vent':
      return [0.25, 0.5, 0.75].map((height) => solid(at(0, height), at(1, height)));
    case 'service':
      return [solid(at(0, 0), at(1, 1)), solid(at(0, 1), at(1, 0))];
    default:
      return [];
  }
};
