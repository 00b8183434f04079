import { gaussLegendre } from './gaussLegendre.ts';

/** Angles of incidence of the diffuse field, with everything that depends on the angle alone. */
export interface AngleGrid {
  readonly count: number;
  /** sin²θ */
  readonly sine2: Float64Array;
  readonly sine: Float64Array;
  readonly cosine: Float64Array;
  /** weights of τd = Σ w·τ∞·σ: 2·cos²θ·sinθ dθ */
  readonly transmission: Float64Array;
  /** weights of the mean square velocity of a leaf: 2·sinθ dθ */
  readonly velocity: Float64Array;
}

/**
 * Gauss-Legendre grid in θ from 0 to 90° (no limiting angle; the window's radiation factor replaces it).
 * @param count number of angles, ≥ 2
 * @returns the grid
 * @source Villot, Guigou and Gagliardini, J. Sound Vib. 245 (2001) 433-455
 * @example angleGrid(160).count // 160
 */
export const angleGrid = (count: number): AngleGrid => {
  const { nodes, weights } = gaussLegendre(count, 0, Math.PI / 2);
  const sine = nodes.map(Math.sin);
  const cosine = nodes.map(Math.cos);
  return {
    count,
    sine,
    cosine,
    sine2: sine.map((s) => s * s),
    transmission: weights.map((w, i) => 2 * w * (cosine[i] ?? 0) ** 2 * (sine[i] ?? 0)),
    velocity: weights.map((w, i) => 2 * w * (sine[i] ?? 0)),
  };
};
