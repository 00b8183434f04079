import { PANEL } from './bandPanel.ts';

/** Bound in this module, as in bandFactor. */
const ROWS = PANEL;

/** Right-hand sides, side by side in each row; the first `start[c]` rows of column c are zero, starts ascending. */
export interface Columns {
  readonly count: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
  readonly start: readonly number[];
}

/** How many columns are not all zero up to a row. */
export const activeColumns = ({ start }: Columns, row: number): number => {
  let active = 0;
  while (active < start.length && (start[active] ?? 0) <= row) active += 1;
  return active;
};

/** The right-hand sides through the panel's part of L, then off what lies below it. */
export const updateColumns = (
  columns: Columns,
  first: number,
  rows: number,
  span: number,
  active: number,
  panel: Float64Array,
  heads: Float64Array,
): void => {
  const { count, re, im } = columns;
  const stride = 4 * ROWS;
  for (let c = 0; c < active; c += 1) {
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
  heads.fill(0, active * 2 * ROWS, (active + 1) * 2 * ROWS);
  for (let j = rows; j < span; j += 2) {
    const left = j * stride + 2 * ROWS;
    for (let c = 0; c < active; c += 2) {
      const head = c * 2 * ROWS;
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
        const h = head + p;
        const lar = panel[l] ?? 0;
        const lai = panel[l + ROWS] ?? 0;
        const lbr = panel[l + 4 * ROWS] ?? 0;
        const lbi = panel[l + 5 * ROWS] ?? 0;
        const yar = heads[h] ?? 0;
        const yai = heads[h + ROWS] ?? 0;
        const ybr = heads[h + 2 * ROWS] ?? 0;
        const ybi = heads[h + 3 * ROWS] ?? 0;
        aar += lar * yar - lai * yai;
        aai += lar * yai + lai * yar;
        abr += lar * ybr - lai * ybi;
        abi += lar * ybi + lai * ybr;
        bar += lbr * yar - lbi * yai;
        bai += lbr * yai + lbi * yar;
        bbr += lbr * ybr - lbi * ybi;
        bbi += lbr * ybi + lbi * ybr;
      }
      const at = (first + j) * count + c;
      const below = at + count;
      const more = c + 1 < active;
      re[at] = (re[at] ?? 0) - aar;
      im[at] = (im[at] ?? 0) - aai;
      if (more) {
        re[at + 1] = (re[at + 1] ?? 0) - abr;
        im[at + 1] = (im[at + 1] ?? 0) - abi;
      }
      if (j + 1 < span) {
        re[below] = (re[below] ?? 0) - bar;
        im[below] = (im[below] ?? 0) - bai;
        if (more) {
          re[below + 1] = (re[below + 1] ?? 0) - bbr;
          im[below + 1] = (im[below + 1] ?? 0) - bbi;
        }
      }
    }
  }
};
