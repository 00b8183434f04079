import type { Columns } from './frontColumns.ts';
import type { TreeMatrix } from './treeFactor.ts';

/** A complex value at every unknown. */
export interface NodalField {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Σ factor·column of the columns that treeFactor has taken through L. */
export const mixedColumns = (columns: Columns, factors: readonly { re: number; im: number }[]): NodalField => {
  const { count } = columns;
  const size = columns.re.length / count;
  const x = { re: new Float64Array(size), im: new Float64Array(size) };
  factors.forEach((factor, c) => {
    if (factor.re === 0 && factor.im === 0) return;
    for (let i = 0; i < size; i += 1) {
      const yr = columns.re[i * count + c] ?? 0;
      const yi = columns.im[i * count + c] ?? 0;
      x.re[i] = (x.re[i] ?? 0) + yr * factor.re - yi * factor.im;
      x.im[i] = (x.im[i] ?? 0) + yr * factor.im + yi * factor.re;
    }
  });
  return x;
};

/** x = L⁻ᵀ·D⁻¹·y, in place. @param matrix as treeFactor leaves it @param x y on entry, in the order of elimination */
export const backSubstitute = ({ tree, re, im }: TreeMatrix, inverse: Float64Array, x: NodalField): void => {
  const widest = tree.fronts.reduce((most, { own, others }) => Math.max(most, own + others.length), 0);
  const localRe = new Float64Array(widest);
  const localIm = new Float64Array(widest);
  for (let n = tree.fronts.length - 1; n >= 0; n -= 1) {
    const front = tree.fronts[n];
    if (!front) continue;
    const { first, own, others, rows } = front;
    const wide = own + others.length;
    for (let k = own; k < wide; k += 1) {
      const at = others[k - own] ?? 0;
      localRe[k] = x.re[at] ?? 0;
      localIm[k] = x.im[at] ?? 0;
    }
    for (let i = own - 1; i >= 0; i -= 1) {
      const row = rows + i * wide;
      // four sums that do not wait for each other
      let rr = 0;
      let ii = 0;
      let ri = 0;
      let ir = 0;
      for (let k = i + 1; k < wide; k += 1) {
        const ur = re[row + k] ?? 0;
        const ui = im[row + k] ?? 0;
        const xr = localRe[k] ?? 0;
        const xi = localIm[k] ?? 0;
        rr += ur * xr;
        ii += ui * xi;
        ri += ur * xi;
        ir += ui * xr;
      }
      const sr = (x.re[first + i] ?? 0) - rr + ii;
      const si = (x.im[first + i] ?? 0) - ri - ir;
      const place = 2 * (first + i);
      const dr = inverse[place] ?? 0;
      const di = inverse[place + 1] ?? 0;
      localRe[i] = x.re[first + i] = sr * dr - si * di;
      localIm[i] = x.im[first + i] = sr * di + si * dr;
    }
  }
};
