import {
  AIR_DENSITY,
  SOUND_SPEED,
  complex,
  decayingRoot,
  minus,
  over,
  scaled,
  squaredModulus,
  times,
} from '../../../../src/engine/quantities/index.ts';
import type { Complex } from '../../../../src/engine/quantities/index.ts';
import { denseMatrix, denseSolve } from '../../../../src/engine/openings/box/denseSolve.ts';

/** Modes of the duct and of the chamber. */
const DUCT_MODES = 8;
const CHAMBER_MODES = 160;
const LOSS = 1e-3;

/** Mean over the port of duct mode m times chamber mode n, on the chamber's width: (1/W)·∫φ_n·ψ_m over the port. */
const overlap = (m: number, n: number, width: number, port: number): number => {
  const from = (width - port) / 2;
  const points = 400;
  let sum = 0;
  for (let i = 0; i < points; i += 1) {
    const s = (port * (i + 0.5)) / points;
    const psi = m === 0 ? 1 : Math.SQRT2 * Math.cos((m * Math.PI * s) / port);
    const phi = n === 0 ? 1 : Math.SQRT2 * Math.cos((n * Math.PI * (from + s)) / width);
    sum += psi * phi;
  }
  return (sum * port) / points / width;
};

/** tan of a complex number. */
const tangent = ({ re, im }: Complex): Complex => {
  const denominator = Math.cos(2 * re) + Math.cosh(2 * im);
  return complex(Math.sin(2 * re) / denominator, Math.sinh(2 * im) / denominator);
};

/** Reflection of the plane wave where the middle of the chamber is rigid, or without pressure. */
const reflection = (frequency: number, length: number, width: number, port: number, rigid: boolean): Complex => {
  const omega = 2 * Math.PI * frequency;
  const k = omega / SOUND_SPEED;
  const Z = denseMatrix(DUCT_MODES, DUCT_MODES);
  for (let n = 0; n < CHAMBER_MODES; n += 1) {
    const kn = decayingRoot(complex(k * k - ((n * Math.PI) / width) ** 2, -k * k * LOSS));
    // far down the tangent of a decaying mode is −j
    const tan = kn.im * length < -60 ? complex(0, -1) : tangent(scaled(kn, length / 2));
    const Yn = scaled(kn, 1 / (AIR_DENSITY * omega));
    const admittance = rigid ? times(complex(0, 1), times(Yn, tan)) : times(complex(0, -1), over(Yn, tan));
    const impedance = over(complex(1), admittance);
    const C = Array.from({ length: DUCT_MODES }, (_, m) => overlap(m, n, width, port));
    C.forEach((a, row) =>
      C.forEach((b, column) => {
        const at = row * DUCT_MODES + column;
        Z.re[at] = (Z.re[at] ?? 0) + (width / port) * a * b * impedance.re;
        Z.im[at] = (Z.im[at] ?? 0) + (width / port) * a * b * impedance.im;
      }),
    );
  }
  const A = denseMatrix(DUCT_MODES, DUCT_MODES);
  const B = denseMatrix(DUCT_MODES, 1);
  for (let row = 0; row < DUCT_MODES; row += 1)
    for (let column = 0; column < DUCT_MODES; column += 1) {
      const km = decayingRoot(complex(k * k - ((column * Math.PI) / port) ** 2));
      const at = row * DUCT_MODES + column;
      const product = times(complex(Z.re[at] ?? 0, Z.im[at] ?? 0), scaled(km, 1 / (AIR_DENSITY * omega)));
      const own = row === column ? 1 : 0;
      A.re[at] = product.re + own;
      A.im[at] = product.im;
      if (column === 0) {
        B.re[row] = product.re - own;
        B.im[row] = product.im;
      }
    }
  const b = denseSolve(A, B);
  return complex(b.re[0] ?? 0, b.im[0] ?? 0);
};

/**
 * Transmission loss of a rigid chamber between two ducts in the middle of its ends, by matching of modes: a second way
 * that shares no grid, no elements and no ports with the wave solution.
 */
export const chamberLoss = (frequency: number, length: number, width: number, port: number): number => {
  const even = reflection(frequency, length, width, port, true);
  const odd = reflection(frequency, length, width, port, false);
  return -10 * Math.log10(squaredModulus(scaled(minus(even, odd), 0.5)));
};

/** The same by plane waves alone: TL = 10 lg[1 + ¼(m − 1/m)²·sin²kl]. @source Davis et al., NACA 1192 (1954) */
export const planeChamberLoss = (frequency: number, length: number, ratio: number): number => {
  const k = (2 * Math.PI * frequency) / SOUND_SPEED;
  return 10 * Math.log10(1 + 0.25 * (ratio - 1 / ratio) ** 2 * Math.sin(k * length) ** 2);
};
