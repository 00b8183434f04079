import { activeColumns, updateColumns } from './bandColumns.ts';
import type { Columns } from './bandColumns.ts';
import { PANEL, panelOf } from './bandPanel.ts';

/** Bound in this module: a test runner reads an import through an object, far too slow for the innermost loop. */
const ROWS = PANEL;

/** A complex symmetric matrix: of each row the diagonal and `half` places to its right, real and imaginary parts apart. */
export interface BandMatrix {
  readonly size: number;
  readonly half: number;
  /** row after row, half + 1 places each */
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/**
 * Factors A = L·D·Lᵀ in place (the band then holds D·Lᵀ) and takes the right-hand sides through L: they then hold
 * L⁻¹Φ. No pivoting; linings and ports supply the damping that keeps it stable.
 * @param matrix A; overwritten
 * @param columns Φ; overwritten
 * @returns the inverse of D, real and imaginary parts in turn
 * @validity about 4·N·b² operations; residual below 1e-12 in every box tried
 * @source Golub & Van Loan, Matrix Computations, 4.1 and 4.3 (blocked, right-looking)
 */
export const bandFactor = (matrix: BandMatrix, columns: Columns): Float64Array => {
  const { size, half, re, im } = matrix;
  const width = half + 1;
  const inverse = new Float64Array(2 * size);
  const panel = new Float64Array((half + ROWS + 2) * 4 * ROWS);
  const heads = new Float64Array((columns.count + 2) * 2 * ROWS);
  for (let first = 0; first < size; first += ROWS) {
    const rows = Math.min(ROWS, size - first);
    const span = Math.min(rows + half, size - first);
    panelOf(matrix, first, rows, span, inverse, panel);
    updateTriangle(re, im, first, rows, span, half, width, panel);
    const active = activeColumns(columns, first + span - 1);
    if (active > 0) updateColumns(columns, first, rows, span, active, panel, heads);
  }
  return inverse;
};

/** What is right of and below the panel: a_jk −= Σ l_pj·u_pk, in tiles of two by two kept in registers. */
const updateTriangle = (
  re: Float64Array,
  im: Float64Array,
  first: number,
  rows: number,
  span: number,
  half: number,
  width: number,
  panel: Float64Array,
): void => {
  const stride = 4 * ROWS;
  for (let j = rows; j < span; j += 2) {
    const left = j * stride + 2 * ROWS;
    const rowA = (first + j) * width - j;
    const rowB = rowA + width - 1;
    const second = j + 1 < span;
    for (let k = j; k < span; k += 2) {
      const up = k * stride;
      let aar = 0;
      let aai = 0;
      let abr = 0;
      let abi = 0;
      let bar = 0;
      let bai = 0;
      let bbr = 0;
      let bbi = 0;
      for (let p = k > half ? k - half : 0; p < rows; p += 1) {
        const l = left + p;
        const u = up + p;
        const lar = panel[l] ?? 0;
        const lai = panel[l + ROWS] ?? 0;
        const lbr = panel[l + 4 * ROWS] ?? 0;
        const lbi = panel[l + 5 * ROWS] ?? 0;
        const uar = panel[u] ?? 0;
        const uai = panel[u + ROWS] ?? 0;
        const ubr = panel[u + 4 * ROWS] ?? 0;
        const ubi = panel[u + 5 * ROWS] ?? 0;
        aar += lar * uar - lai * uai;
        aai += lar * uai + lai * uar;
        abr += lar * ubr - lai * ubi;
        abi += lar * ubi + lai * ubr;
        bar += lbr * uar - lbi * uai;
        bai += lbr * uai + lbi * uar;
        bbr += lbr * ubr - lbi * ubi;
        bbi += lbr * ubi + lbi * ubr;
      }
      const a = rowA + k;
      const b = rowB + k;
      const more = k + 1 < span;
      re[a] = (re[a] ?? 0) - aar;
      im[a] = (im[a] ?? 0) - aai;
      if (more) {
        re[a + 1] = (re[a + 1] ?? 0) - abr;
        im[a + 1] = (im[a + 1] ?? 0) - abi;
        if (second) {
          re[b + 1] = (re[b + 1] ?? 0) - bbr;
          im[b + 1] = (im[b + 1] ?? 0) - bbi;
        }
      }
      if (k > j && second) {
        re[b] = (re[b] ?? 0) - bar;
        im[b] = (im[b] ?? 0) - bai;
      }
    }
  }
};
