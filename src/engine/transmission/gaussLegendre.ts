/** Nodes and weights of a quadrature. */
export interface Quadrature {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Gauss-Legendre quadrature on an interval: ∫ f(x) dx ≈ Σ wᵢ·f(xᵢ), exact for polynomials up to degree 2n − 1.
 * @param count n, ≥ 1
 * @param from lower end
 * @param to upper end
 * @returns nodes ascending, weights
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 25.4.30; roots by Newton's method
 * @example gaussLegendre(2, -1, 1).nodes // ±0.577
 */
export const gaussLegendre = (count: number, from: number, to: number): Quadrature => {
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  const half = (to - from) / 2;
  const middle = (to + from) / 2;
  for (let i = 0; i < count; i += 1) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 50; step += 1) {
      let previous = 1;
      let value = x;
      for (let k = 2; k <= count; k += 1) {
        const next = ((2 * k - 1) * x * value - (k - 1) * previous) / k;
        previous = value;
        value = next;
      }
      slope = (count * (x * value - previous)) / (x * x - 1);
      const change = value / slope;
      x -= change;
      if (Math.abs(change) < 1e-15) break;
    }
    nodes[count - 1 - i] = middle + half * x;
    weights[count - 1 - i] = (2 * half) / ((1 - x * x) * slope * slope);
  }
  return { nodes, weights };
};
