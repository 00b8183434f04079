import { PANEL } from './frontPanel.ts';

const ROWS = PANEL;

/** Right-hand sides, side by side in each row. */
export interface Columns {
  readonly count: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/**
 * Right-hand sides of a front through a panel's part of L, then off what lies below it.
 * @param columns rows of the front in its own order
 * @param first row of the panel in the front
 * @param rows of the panel
 * @param span places from the panel's first diagonal to the end of its rows
 * @param panel from panelOf
 * @param heads room for twice PANEL numbers a column
 */
export const updateColumns = (
  { count, re, im }: Columns,
  first: number,
  rows: number,
  span: number,
  panel: Float64Array,
  heads: Float64Array,
): void => {
  const stride = 4 * ROWS;
  for (let c = 0; c < count; c += 1) {
    const head = c * 2 * ROWS;
    for (let p = 0; p < rows; p += 1) {
      const at = (first + p) * count + c;
      let vr = re[at] ?? 0;
      let vi = im[at] ?? 0;
      for (let q = 0; q < p; q += 1) {
        const l = p * stride + 2 * ROWS + q;
        const lr = panel[l] ?? 0;
        const li = panel[l + ROWS] ?? 0;
        const yr = heads[head + q] ?? 0;
        const yi = heads[head + ROWS + q] ?? 0;
        vr -= lr * yr - li * yi;
        vi -= lr * yi + li * yr;
      }
      heads[head + p] = vr;
      heads[head + ROWS + p] = vi;
      re[at] = vr;
      im[at] = vi;
    }
  }
  for (let j = rows; j < span; j += 1) {
    const left = j * stride + 2 * ROWS;
    for (let c = 0; c < count; c += 1) {
      const head = c * 2 * ROWS;
      let sr = 0;
      let si = 0;
      for (let p = 0; p < rows; p += 1) {
        const lr = panel[left + p] ?? 0;
        const li = panel[left + p + ROWS] ?? 0;
        const yr = heads[head + p] ?? 0;
        const yi = heads[head + p + ROWS] ?? 0;
        sr += lr * yr - li * yi;
        si += lr * yi + li * yr;
      }
      const at = (first + j) * count + c;
      re[at] = (re[at] ?? 0) - sr;
      im[at] = (im[at] ?? 0) - si;
    }
  }
};
