/** Orthonormal real columns of equal length. */
export type Basis = readonly Float64Array[];

/** Columns below this share of their length add nothing new. */
const NEGLIGIBLE = 1e-10;

const dot = (a: Float64Array, b: Float64Array): number => {
  let even = 0;
  let odd = 0;
  const end = a.length & ~1;
  for (let i = 0; i < end; i += 2) {
    even += (a[i] ?? 0) * (b[i] ?? 0);
    odd += (a[i + 1] ?? 0) * (b[i + 1] ?? 0);
  }
  return even + odd + (end < a.length ? (a[end] ?? 0) * (b[end] ?? 0) : 0);
};

/** Four products at once: each place of `b` is read once for four columns. */
export const fourDots = (a: readonly [Float64Array, Float64Array, Float64Array, Float64Array], b: Float64Array) => {
  const [p, q, r, s] = a;
  let dp = 0;
  let dq = 0;
  let dr = 0;
  let ds = 0;
  for (let i = 0; i < b.length; i += 1) {
    const it = b[i] ?? 0;
    dp += (p[i] ?? 0) * it;
    dq += (q[i] ?? 0) * it;
    dr += (r[i] ?? 0) * it;
    ds += (s[i] ?? 0) * it;
  }
  return [dp, dq, dr, ds] as const;
};

/** Takes what lies along the basis off a column. */
const takeOff = (column: Float64Array, basis: Basis): void => {
  for (const one of basis) {
    const along = dot(one, column);
    for (let i = 0; i < column.length; i += 1) column[i] = (column[i] ?? 0) - along * (one[i] ?? 0);
  }
};

/**
 * Orthonormal basis of the space of the given columns, by Gram and Schmidt, each column taken twice.
 * @param columns overwritten
 */
export const orthonormal = (columns: readonly Float64Array[]): Basis => {
  const basis: Float64Array[] = [];
  for (const column of columns) {
    const before = Math.sqrt(dot(column, column));
    takeOff(column, basis);
    takeOff(column, basis);
    const length = Math.sqrt(dot(column, column));
    if (length <= NEGLIGIBLE * before) continue;
    for (let i = 0; i < column.length; i += 1) column[i] = (column[i] ?? 0) / length;
    basis.push(column);
  }
  return basis;
};
