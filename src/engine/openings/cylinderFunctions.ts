/** Ascending series up to here, asymptotic expansion beyond: both good to 1e-9 at the join. */
const SERIES_LIMIT = 20;

/** Σ of a series whose next term follows from the last by `ratio(n)`. */
const series = (first: number, ratio: (n: number) => number): number => {
  let term = first;
  let sum = first;
  for (let n = 1; n < 80 && Math.abs(term) > 1e-18 * Math.abs(sum); n += 1) {
    term *= ratio(n);
    sum += term;
  }
  return sum;
};

/** Hankel's P and Q of order one, cut at the smallest term. */
const hankelPQ = (x: number): readonly [number, number] => {
  let P = 1;
  let Q = 0;
  let term = 1;
  for (let k = 1; k < 60; k += 1) {
    const next = (term * (4 - (2 * k - 1) ** 2)) / (8 * k * x);
    if (Math.abs(next) > Math.abs(term)) break;
    term = next;
    const sign = k % 4 < 2 ? 1 : -1;
    if (k % 2 === 0) P += sign * term;
    else Q += sign * term;
  }
  return [P, Q];
};

/**
 * Bessel function of the first kind and order one, J1(x).
 * @param x ≥ 0
 * @source Abramowitz & Stegun, Handbook of Mathematical Functions, 9.1.10 and 9.2.5
 * @example besselJ1(1) // 0.44005
 */
export const besselJ1 = (x: number): number => {
  if (x <= SERIES_LIMIT) return series(x / 2, (n) => -(x * x) / 4 / (n * (n + 1)));
  const [P, Q] = hankelPQ(x);
  const phase = x - (3 * Math.PI) / 4;
  return Math.sqrt(2 / (Math.PI * x)) * (P * Math.cos(phase) - Q * Math.sin(phase));
};

/**
 * Struve function of order one, H1(x).
 * @param x ≥ 0
 * @source Abramowitz & Stegun, Handbook of Mathematical Functions, 12.1.5 and 12.1.31
 * @example struveH1(1) // 0.19846
 */
export const struveH1 = (x: number): number => {
  if (x <= SERIES_LIMIT) {
    const first = (2 * x * x) / (3 * Math.PI);
    return x === 0 ? 0 : series(first, (n) => -(x * x) / ((2 * n + 1) * (2 * n + 3)));
  }
  const [P, Q] = hankelPQ(x);
  const phase = x - (3 * Math.PI) / 4;
  const Y1 = Math.sqrt(2 / (Math.PI * x)) * (P * Math.sin(phase) + Q * Math.cos(phase));
  // H1 − Y1 = (2/π)(1 + 1/x² − 3/x⁴ + 45/x⁶ − …), cut at the smallest term
  let term = 1;
  let sum = 1;
  for (let n = 1; n < 40; n += 1) {
    const next = (term * (n === 1 ? 1 : -(2 * n - 1) * (2 * n - 3))) / (x * x);
    if (Math.abs(next) > Math.abs(term)) break;
    term = next;
    sum += term;
  }
  return Y1 + (2 / Math.PI) * sum;
};
