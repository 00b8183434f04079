import { PANEL } from './frontPanel.ts';

/** Bound in this module: a test runner reads an import through an object, far too slow for the innermost loop. */
const ROWS = PANEL;

/**
 * What is right of and below a panel: a_jk −= Σ l_pj·u_pk, in tiles of two by two kept in registers.
 * @param re, im store of the matrix
 * @param from, to rows, counted from the panel's first; to ≤ span
 * @param span places from the panel's first diagonal to the end of its rows
 * @param start where row `from` would have the panel's first column
 * @param stride from a row to the next
 * @param rows of the panel
 * @param panel from panelOf
 */
export const updateRows = (
  re: Float64Array,
  im: Float64Array,
  from: number,
  to: number,
  span: number,
  start: number,
  stride: number,
  rows: number,
  panel: Float64Array,
): void => {
  const width = 4 * ROWS;
  for (let j = from; j < to; j += 2) {
    const left = j * width + 2 * ROWS;
    const rowA = start + (j - from) * stride;
    const rowB = rowA + stride;
    const second = j + 1 < to;
    for (let k = j; k < span; k += 2) {
      const up = k * width;
      let aar = 0;
      let aai = 0;
      let abr = 0;
      let abi = 0;
      let bar = 0;
      let bai = 0;
      let bbr = 0;
      let bbi = 0;
      for (let p = 0; p < rows; p += 1) {
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
