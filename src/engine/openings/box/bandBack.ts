import type { Columns } from './bandColumns.ts';
import type { BandMatrix } from './bandFactor.ts';

/** A complex value at every unknown. */
export interface NodalField {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Σ factor·column of the columns that bandFactor has taken through L. */
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

/** x = L⁻ᵀ·D⁻¹·y, in place. @param matrix as bandFactor leaves it @param x y on entry */
export const backSubstitute = ({ size, half, re, im }: BandMatrix, inverse: Float64Array, x: NodalField): void => {
  for (let i = size - 1; i >= 0; i -= 1) {
    const row = i * (half + 1) - i;
    const end = Math.min(size, i + half + 1);
    let sr = x.re[i] ?? 0;
    let si = x.im[i] ?? 0;
    for (let k = i + 1; k < end; k += 1) {
      const ur = re[row + k] ?? 0;
      const ui = im[row + k] ?? 0;
      const xr = x.re[k] ?? 0;
      const xi = x.im[k] ?? 0;
      sr -= ur * xr - ui * xi;
      si -= ur * xi + ui * xr;
    }
    const dr = inverse[2 * i] ?? 0;
    const di = inverse[2 * i + 1] ?? 0;
    x.re[i] = sr * dr - si * di;
    x.im[i] = sr * di + si * dr;
  }
};
