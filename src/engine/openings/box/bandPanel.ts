import type { BandMatrix } from './bandFactor.ts';

/** Rows that are eliminated together. */
export const PANEL = 8;

/**
 * Factors the rows of one panel among themselves and lays them out column by column for the update of the rest:
 * of each column the panel's u real, u imaginary, l = u/d real, l imaginary; zero outside the band.
 */
export const panelOf = (
  matrix: BandMatrix,
  first: number,
  rows: number,
  span: number,
  inverse: Float64Array,
  panel: Float64Array,
): void => {
  const { half, re, im } = matrix;
  const width = half + 1;
  const stride = 4 * PANEL;
  panel.fill(0, 0, (span + 1) * stride);
  for (let p = 0; p < rows; p += 1) {
    const row = (first + p) * width - p;
    const end = Math.min(p + width, span);
    for (let q = 0; q < p; q += 1) {
      const l = p * stride + 2 * PANEL + q;
      const lr = panel[l] ?? 0;
      const li = panel[l + PANEL] ?? 0;
      const above = (first + q) * width - q;
      const last = Math.min(q + width, span);
      for (let k = p; k < last; k += 1) {
        const ur = re[above + k] ?? 0;
        const ui = im[above + k] ?? 0;
        re[row + k] = (re[row + k] ?? 0) - (lr * ur - li * ui);
        im[row + k] = (im[row + k] ?? 0) - (lr * ui + li * ur);
      }
    }
    const dr = re[row + p] ?? 0;
    const di = im[row + p] ?? 0;
    const scale = 1 / (dr * dr + di * di);
    const ir = dr * scale;
    const ii = -di * scale;
    inverse[2 * (first + p)] = ir;
    inverse[2 * (first + p) + 1] = ii;
    for (let k = p + 1; k < end; k += 1) {
      const ur = re[row + k] ?? 0;
      const ui = im[row + k] ?? 0;
      const u = k * stride + p;
      panel[u] = ur;
      panel[u + PANEL] = ui;
      panel[u + 2 * PANEL] = ur * ir - ui * ii;
      panel[u + 3 * PANEL] = ur * ii + ui * ir;
    }
  }
};
