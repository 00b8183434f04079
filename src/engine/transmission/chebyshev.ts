/** Chebyshev points of an interval with their barycentric weights. */
export interface ChebyshevPoints {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Chebyshev points of the first kind.
 * @param count how many, ≥ 1
 * @param from lower end
 * @param to upper end
 * @returns nodes and barycentric weights
 * @source Berrut and Trefethen, SIAM Review 46 (2004) 501-517, eq. 5.3
 * @example chebyshev(1, 0, 2).nodes // [1]
 */
export const chebyshev = (count: number, from: number, to: number): ChebyshevPoints => {
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let i = 0; i < count; i += 1) {
    const angle = (Math.PI * (i + 0.5)) / count;
    nodes.push((from + to) / 2 + ((to - from) / 2) * Math.cos(angle));
    weights.push((i % 2 === 0 ? 1 : -1) * Math.sin(angle));
  }
  return { nodes, weights };
};

/**
 * Value of the polynomial through the points at x, barycentric form.
 * @param points nodes and weights
 * @param values at the nodes
 * @param x within the interval
 * @source Berrut and Trefethen, SIAM Review 46 (2004) 501-517, eq. 4.2
 */
export const interpolate = (points: ChebyshevPoints, values: readonly number[], x: number): number => {
  let top = 0;
  let bottom = 0;
  for (let n = 0; n < values.length; n += 1) {
    const gap = x - (points.nodes[n] ?? 0);
    if (Math.abs(gap) < 1e-14) return values[n] ?? 0;
    const share = (points.weights[n] ?? 0) / gap;
    top += share * (values[n] ?? 0);
    bottom += share;
  }
  return top / bottom;
};
