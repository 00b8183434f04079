import type { Complex } from '../../quantities/index.ts';

/** Second derivatives at the knots; the first two and the last two pieces are one polynomial each (not-a-knot). */
const curvatures = (x: readonly number[], y: readonly number[]): number[] => {
  const n = x.length - 1;
  const h = (i: number): number => (x[i + 1] ?? 0) - (x[i] ?? 0);
  const slope = (i: number): number => ((y[i + 1] ?? 0) - (y[i] ?? 0)) / h(i);
  if (n < 3) {
    const bend = n < 2 ? 0 : (2 * (slope(1) - slope(0))) / (h(0) + h(1));
    return x.map(() => bend);
  }
  const diagonal: number[] = [];
  const right: number[] = [];
  const side: number[] = [];
  for (let i = 1; i < n; i += 1) {
    let own = 2 * (h(i - 1) + h(i));
    let left = i > 1 ? h(i - 1) : 0;
    let next = i < n - 1 ? h(i) : 0;
    if (i === 1) {
      own += (h(0) * (h(0) + h(1))) / h(1);
      next = h(1) - h(0) ** 2 / h(1);
    }
    if (i === n - 1) {
      own += (h(n - 1) * (h(n - 1) + h(n - 2))) / h(n - 2);
      left = h(n - 2) - h(n - 1) ** 2 / h(n - 2);
    }
    const before = diagonal.length - 1;
    const factor = before < 0 ? 0 : left / (diagonal[before] ?? 1);
    diagonal.push(own - factor * (right[before] ?? 0));
    side.push(6 * (slope(i) - slope(i - 1)) - factor * (side[before] ?? 0));
    right.push(next);
  }
  const M = new Array<number>(n + 1).fill(0);
  for (let i = n - 1; i >= 1; i -= 1)
    M[i] = ((side[i - 1] ?? 0) - (i < n - 1 ? (right[i - 1] ?? 0) * (M[i + 1] ?? 0) : 0)) / (diagonal[i - 1] ?? 1);
  M[0] = ((h(0) + h(1)) * (M[1] ?? 0) - h(0) * (M[2] ?? 0)) / h(1);
  M[n] = ((h(n - 1) + h(n - 2)) * (M[n - 1] ?? 0) - h(n - 1) * (M[n - 2] ?? 0)) / h(n - 2);
  return M;
};

/**
 * Cubic spline through points; beyond them the outermost pieces go on.
 * @param x ascending, at least 2
 * @param y as many
 * @source de Boor, A Practical Guide to Splines (not-a-knot ends)
 * @example cubicSpline([0, 1, 2, 3], [0, 1, 8, 27])(1.5) // 3.375
 */
export const cubicSpline = (x: readonly number[], y: readonly number[]): ((at: number) => number) => {
  const M = curvatures(x, y);
  return (at) => {
    let low = 0;
    let high = x.length - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((x[middle] ?? 0) <= at) low = middle;
      else high = middle;
    }
    const h = (x[low + 1] ?? 0) - (x[low] ?? 0);
    const a = ((x[low + 1] ?? 0) - at) / h;
    const b = (at - (x[low] ?? 0)) / h;
    const bend = (a ** 3 - a) * (M[low] ?? 0) + (b ** 3 - b) * (M[low + 1] ?? 0);
    return a * (y[low] ?? 0) + b * (y[low + 1] ?? 0) + (bend * h * h) / 6;
  };
};

/** The same for complex values. */
export const complexSpline = (x: readonly number[], y: readonly Complex[]): ((at: number) => Complex) => {
  const re = cubicSpline(
    x,
    y.map((it) => it.re),
  );
  const im = cubicSpline(
    x,
    y.map((it) => it.im),
  );
  return (at) => ({ re: re(at), im: im(at) });
};
