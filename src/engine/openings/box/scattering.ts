import { complex, minus, plus, scaled, squaredModulus, times } from '../../quantities/index.ts';
import type { Complex } from '../../quantities/index.ts';
import { denseMatrix, denseSolve } from './denseSolve.ts';
import type { DenseMatrix } from './denseSolve.ts';
import type { PortMode } from './portModes.ts';
import type { MeshPort } from './portShapes.ts';

/** Pressure amplitudes that leave, for each that arrives: element (row leaves, column arrives). */
export interface Scattering {
  readonly modes: readonly PortMode[];
  readonly S: DenseMatrix;
}

const at = (m: DenseMatrix, row: number, column: number): Complex => ({
  re: m.re[row * m.columns + column] ?? 0,
  im: m.im[row * m.columns + column] ?? 0,
});
const put = (m: DenseMatrix, row: number, column: number, value: Complex): void => {
  m.re[row * m.columns + column] = value.re;
  m.im[row * m.columns + column] = value.im;
};

/**
 * S = [I − G(y0 − Y)]⁻¹[G(Y + y0) − I].
 * @param modes of both ports
 * @param G mean pressure of each mode per unit velocity of each, with the local admittance y0 in place; overwritten
 */
export const scattering = (modes: readonly PortMode[], G: DenseMatrix): Scattering => {
  const n = modes.length;
  const A = denseMatrix(n, n);
  const B = denseMatrix(n, n);
  modes.forEach(({ admittance, local, endReactance }, column) => {
    const out = minus(complex(local), admittance);
    const into = plus(admittance, complex(local));
    for (let row = 0; row < n; row += 1) {
      const own = row === column ? 1 : 0;
      const g = plus(at(G, row, column), complex(0, own * endReactance));
      put(A, row, column, minus(complex(own), times(g, out)));
      put(B, row, column, minus(times(g, into), complex(own)));
    }
  });
  return { modes, S: denseSolve(A, B) };
};

/** S between the plane modes, [leaves][arrives]. */
export const planeBlock = ({ modes, S }: Scattering): readonly [Complex, Complex, Complex, Complex] => {
  const other = modes.findIndex(({ port }) => port === 1);
  return [at(S, 0, 0), at(S, 0, other), at(S, other, 0), at(S, other, other)];
};

/**
 * Power that leaves by all travelling modes of a port, per unit power that arrives in one mode:
 * T = |S_nm|²·(S_out·Re k_n)/(S_in·Re k_m).
 */
export const powerShare = (
  { modes, S }: Scattering,
  ports: readonly [MeshPort, MeshPort],
  arrives: number,
  leavesBy: 0 | 1,
  planeOnly = false,
): number => {
  const source = modes[arrives];
  if (source === undefined) return 0;
  let sum = 0;
  modes.forEach((mode, row) => {
    if (mode.port !== leavesBy || !mode.propagates || (planeOnly && mode.mode > 0)) return;
    const ratio = (mode.wavenumber.re * ports[mode.port].width) / (source.wavenumber.re * ports[source.port].width);
    sum += squaredModulus(at(S, row, arrives)) * ratio;
  });
  return sum;
};

/** Velocity that drives the matrix in each mode when one mode arrives with unit amplitude: Y(a − b) + y0(a + b). */
export const drivenBy = ({ modes, S }: Scattering, arrives: number): Complex[] =>
  modes.map(({ admittance, local }, row) => {
    const a = complex(row === arrives ? 1 : 0);
    const b = at(S, row, arrives);
    return plus(times(admittance, minus(a, b)), scaled(plus(a, b), local));
  });
