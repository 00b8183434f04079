/** Rows that are eliminated together. */
export const PANEL = 8;

/**
 * Factors the rows of one panel among themselves and lays them out column by column for the update of the rest: of each
 * column the panel's u real, u imaginary, l = u/d real, l imaginary.
 * @param re, im store of the matrix
 * @param start of the panel's first row in the store
 * @param stride from a row to the next
 * @param rows of the panel
 * @param span places from the panel's first diagonal to the end of its rows
 * @param inverse of D; written for the panel's rows, real and imaginary parts in turn
 * @param at where they begin in it
 */
export const panelOf = (
  re: Float64Array,
  im: Float64Array,
  start: number,
  stride: number,
  rows: number,
  span: number,
  inverse: Float64Array,
  at: number,
  panel: Float64Array,
): void => {
  const width = 4 * PANEL;
  for (let p = 0; p < rows; p += 1) {
    const row = start + p * stride;
    const own = p * width + 2 * PANEL;
    let dr = 0;
    let di = 0;
    for (let k = p; k < span; k += 1) {
      const column = k * width;
      // four sums that do not wait for each other
      let rr = 0;
      let ii = 0;
      let ri = 0;
      let ir = 0;
      for (let q = 0; q < p; q += 1) {
        const lr = panel[own + q] ?? 0;
        const li = panel[own + PANEL + q] ?? 0;
        const vr = panel[column + q] ?? 0;
        const vi = panel[column + PANEL + q] ?? 0;
        rr += lr * vr;
        ii += li * vi;
        ri += lr * vi;
        ir += li * vr;
      }
      const ur = (re[row + k] ?? 0) - rr + ii;
      const ui = (im[row + k] ?? 0) - ri - ir;
      re[row + k] = ur;
      im[row + k] = ui;
      if (k === p) {
        const scale = 1 / (ur * ur + ui * ui);
        dr = ur * scale;
        di = -ui * scale;
        inverse[at + 2 * p] = dr;
        inverse[at + 2 * p + 1] = di;
        continue;
      }
      const u = column + p;
      panel[u] = ur;
      panel[u + PANEL] = ui;
      panel[u + 2 * PANEL] = ur * dr - ui * di;
      panel[u + 3 * PANEL] = ur * di + ui * dr;
    }
  }
};
