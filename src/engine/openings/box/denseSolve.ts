/** A dense complex matrix, row after row. */
export interface DenseMatrix {
  readonly rows: number;
  readonly columns: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export const denseMatrix = (rows: number, columns: number): DenseMatrix => ({
  rows,
  columns,
  re: new Float64Array(rows * columns),
  im: new Float64Array(rows * columns),
});

const swapRows = ({ columns, re, im }: DenseMatrix, a: number, b: number): void => {
  for (const values of [re, im])
    for (let c = 0; c < columns; c += 1) {
      const kept = values[a * columns + c] ?? 0;
      values[a * columns + c] = values[b * columns + c] ?? 0;
      values[b * columns + c] = kept;
    }
};

/** row ← row − factor·pivot, from a column on. */
const subtractRow = (m: DenseMatrix, row: number, pivot: number, fr: number, fi: number, from: number): void => {
  const { columns, re, im } = m;
  for (let c = from; c < columns; c += 1) {
    const pr = re[pivot * columns + c] ?? 0;
    const pi = im[pivot * columns + c] ?? 0;
    re[row * columns + c] = (re[row * columns + c] ?? 0) - (fr * pr - fi * pi);
    im[row * columns + c] = (im[row * columns + c] ?? 0) - (fr * pi + fi * pr);
  }
};

/**
 * X of A·X = B by elimination with row exchange; both are overwritten and B returned as X.
 * @param A square, small (tens of rows)
 * @param B as many rows
 */
export const denseSolve = (A: DenseMatrix, B: DenseMatrix): DenseMatrix => {
  const n = A.rows;
  for (let p = 0; p < n; p += 1) {
    let best = p;
    const size = (row: number): number => Math.hypot(A.re[row * n + p] ?? 0, A.im[row * n + p] ?? 0);
    for (let row = p + 1; row < n; row += 1) if (size(row) > size(best)) best = row;
    if (best !== p) {
      swapRows(A, best, p);
      swapRows(B, best, p);
    }
    const dr = A.re[p * n + p] ?? 0;
    const di = A.im[p * n + p] ?? 0;
    const square = dr * dr + di * di;
    for (let row = 0; row < n; row += 1) {
      if (row === p) continue;
      const ar = A.re[row * n + p] ?? 0;
      const ai = A.im[row * n + p] ?? 0;
      const fr = (ar * dr + ai * di) / square;
      const fi = (ai * dr - ar * di) / square;
      subtractRow(A, row, p, fr, fi, p);
      subtractRow(B, row, p, fr, fi, 0);
    }
    for (let c = 0; c < B.columns; c += 1) {
      const br = B.re[p * B.columns + c] ?? 0;
      const bi = B.im[p * B.columns + c] ?? 0;
      B.re[p * B.columns + c] = (br * dr + bi * di) / square;
      B.im[p * B.columns + c] = (bi * dr - br * di) / square;
    }
    // the row is now divided: its own pivot counts as one
    const inverse = { re: dr / square, im: -di / square };
    for (let c = p; c < n; c += 1) {
      const ar = A.re[p * n + c] ?? 0;
      const ai = A.im[p * n + c] ?? 0;
      A.re[p * n + c] = ar * inverse.re - ai * inverse.im;
      A.im[p * n + c] = ar * inverse.im + ai * inverse.re;
    }
  }
  return B;
};
