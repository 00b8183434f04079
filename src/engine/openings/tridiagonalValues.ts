import { complex, minus, over, plus, scaled, squaredModulus, times } from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';

const ZERO = complex(0);
const size = ({ re, im }: Complex): number => Math.abs(re) + Math.abs(im);

/** Square root with Re ≥ 0. */
export const complexRoot = ({ re, im }: Complex): Complex => {
  const modulus = Math.hypot(re, im);
  const real = Math.sqrt(Math.max(0, (modulus + re) / 2));
  const imaginary = Math.sqrt(Math.max(0, (modulus - re) / 2));
  return complex(real, im < 0 ? -imaginary : imaginary);
};

/**
 * Eigenvalues of a complex symmetric tridiagonal matrix, by QL steps with complex rotations.
 * @param diagonal n values
 * @param beside n − 1 values next to the diagonal
 * @validity a rotation with c² + s² = 0 breaks down; it has not been met in lined ducts
 * @source Cullum & Willoughby, Lanczos Algorithms (1985), chapter 6; QL: Wilkinson & Reinsch (1971), II/4
 */
export const tridiagonalValues = (diagonal: readonly Complex[], beside: readonly Complex[]): Complex[] => {
  const d = [...diagonal];
  const e = [...beside, ZERO];
  const n = d.length;
  const at = (list: readonly Complex[], i: number): Complex => list[i] ?? ZERO;
  for (let l = 0; l < n; l += 1) {
    for (let turn = 0; turn < 60; turn += 1) {
      let m = l;
      while (m < n - 1 && size(at(e, m)) > 1e-14 * (size(at(d, m)) + size(at(d, m + 1)))) m += 1;
      if (m === l) break;
      const half = scaled(over(minus(at(d, l + 1), at(d, l)), at(e, l)), 0.5);
      const t = complexRoot(plus(times(half, half), complex(1)));
      const sum = squaredModulus(plus(half, t)) > squaredModulus(minus(half, t)) ? plus(half, t) : minus(half, t);
      let g = plus(minus(at(d, m), at(d, l)), over(at(e, l), sum));
      let [s, c, p] = [complex(1), complex(1), ZERO];
      for (let i = m - 1; i >= l; i -= 1) {
        const f = times(s, at(e, i));
        const b = times(c, at(e, i));
        const r = complexRoot(plus(times(f, f), times(g, g)));
        e[i + 1] = r;
        s = over(f, r);
        c = over(g, r);
        g = minus(at(d, i + 1), p);
        const next = plus(times(minus(at(d, i), g), s), scaled(times(c, b), 2));
        p = times(s, next);
        d[i + 1] = plus(g, p);
        g = minus(times(c, next), b);
      }
      d[l] = minus(at(d, l), p);
      e[l] = g;
      e[m] = ZERO;
    }
  }
  return d;
};
