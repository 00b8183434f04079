import { AIR_IMPEDANCE, complex, minus, over, plus, scaled, times } from '../../quantities/index.ts';
import type { Complex } from '../../quantities/index.ts';
import type { Basis } from './basis.ts';
import type { BoxSystem, Quadratic, SolvedLine } from './boxSystem.ts';
import { denseMatrix } from './denseSolve.ts';
import { fillingFluid } from './fillingFluid.ts';
import { fullFront } from './frontTree.ts';
import { portModes } from './portModes.ts';
import type { PortMode } from './portModes.ts';
import { projected, projectedShape } from './projection.ts';
import type { Scattering } from './scattering.ts';
import { backSubstitute, mixedColumns } from './treeBack.ts';
import type { NodalField } from './treeBack.ts';
import { treeFactor, treeMatrix } from './treeFactor.ts';
import type { TreeMatrix } from './treeFactor.ts';

/** A box projected once on a basis of its own solutions: any frequency between them is a small dense system. */
export interface ReducedBox {
  readonly order: number;
  readonly solve: (frequency: number) => SolvedLine;
}

/** Y' = Y/(1 + Z·Y): a mode's admittance seen through the near field of a face port; Y on an edge. */
const seen = ({ admittance, endReactance }: PortMode): Complex =>
  over(admittance, plus(complex(1), times(complex(0, endReactance), admittance)));

/** Adds factor·φ·φᵀ to the upper triangle of a full matrix. */
const addOuter = ({ re, im }: TreeMatrix, phi: Float64Array, { re: fr, im: fi }: Complex): void => {
  const order = phi.length;
  for (let i = 0; i < order; i += 1) {
    const row = i * order;
    const own = phi[i] ?? 0;
    for (let k = i; k < order; k += 1) {
      const product = own * (phi[k] ?? 0);
      re[row + k] = (re[row + k] ?? 0) + fr * product;
      im[row + k] = (im[row + k] ?? 0) + fi * product;
    }
  }
};

const along = (a: Float64Array, b: Float64Array): number => a.reduce((sum, it, i) => sum + it * (b[i] ?? 0), 0);

/** xᴴ·A·x of a real symmetric matrix given by its upper triangle. */
const quadratic = (A: Float64Array, { re, im }: NodalField): number => {
  const order = re.length;
  let sum = 0;
  for (let i = 0; i < order; i += 1) {
    const row = i * order;
    const [own, other] = [re[i] ?? 0, im[i] ?? 0];
    let right = 0;
    for (let k = i + 1; k < order; k += 1) right += (A[row + k] ?? 0) * (own * (re[k] ?? 0) + other * (im[k] ?? 0));
    sum += (A[row + i] ?? 0) * (own * own + other * other) + 2 * right;
  }
  return sum;
};

/** target += factor·source. */
const addScaled = (target: Float64Array, source: Float64Array, factor: number): void => {
  if (factor === 0) return;
  for (let i = 0; i < source.length; i += 1) target[i] = (target[i] ?? 0) + factor * (source[i] ?? 0);
};

/**
 * Galerkin projection of the box on a real basis V: A(f) = Σ K/ρ(f) − ω²·M/K(f) + jω·y0·B is a sum of real matrices with
 * scalar functions of frequency, and each port mode adds jω(Y − y0)/w·φφᵀ; all are projected once.
 * @param system mesh and ports
 * @param basis orthonormal columns that span solutions at neighbouring frequencies
 * @validity plane waves and the decaying modes of both ports; below the ports' cut-on
 */
export const reducedBox = (system: BoxSystem, basis: Basis): ReducedBox => {
  const { mesh, ports, height } = system;
  const order = basis.length;
  const parts = mesh.entries.map((entries) => ({
    stiffness: projected(basis, entries, entries.stiffness),
    mass: projected(basis, entries, entries.mass),
  }));
  const local = ports.map(({ mass }) => projected(basis, mass, mass.value));
  const shapes = new Map<string, Float64Array>();
  const shapeOf = ({ port, mode }: PortMode): Float64Array => {
    const key = `${port} ${mode}`;
    const known = shapes.get(key) ?? projectedShape(basis, ports[port].shape(mode));
    shapes.set(key, known);
    return known;
  };
  const room = treeMatrix(fullFront(order));

  const solve = (frequency: number): SolvedLine => {
    const omega = 2 * Math.PI * frequency;
    const fluids = mesh.grid.fillings.map((filling) => fillingFluid(filling, frequency));
    const modes = portModes(ports, frequency, height);
    room.re.fill(0);
    room.im.fill(0);
    parts.forEach(({ stiffness, mass }, filling) => {
      const fluid = fluids[filling];
      if (fluid === undefined) return;
      addScaled(room.re, stiffness, fluid.specificVolume.re);
      addScaled(room.im, stiffness, fluid.specificVolume.im);
      addScaled(room.re, mass, -omega * omega * fluid.compressibility.re);
      addScaled(room.im, mass, -omega * omega * fluid.compressibility.im);
    });
    for (const it of local) addScaled(room.im, it, omega / AIR_IMPEDANCE);
    for (const mode of modes) {
      const excess = minus(seen(mode), complex(mode.local));
      addOuter(room, shapeOf(mode), times(complex(0, omega / ports[mode.port].width), excess));
    }
    const arriving = modes.flatMap((mode, index) => (mode.propagates ? [index] : []));
    const count = arriving.length;
    const columns = {
      count,
      re: new Float64Array(order * count),
      im: new Float64Array(order * count),
    };
    arriving.forEach((index, c) => {
      const mode = modes[index];
      if (mode === undefined) return;
      const load = scaled(times(complex(0, omega), seen(mode)), 2);
      shapeOf(mode).forEach((value, i) => {
        columns.re[i * count + c] = load.re * value;
        columns.im[i * count + c] = load.im * value;
      });
    });
    const inverse = treeFactor(room, columns);
    const coordinates = arriving.map((_, c) => {
      const x = mixedColumns(
        columns,
        arriving.map((_, other) => complex(other === c ? 1 : 0)),
      );
      backSubstitute(room, inverse, x);
      return x;
    });
    const S = denseMatrix(modes.length, modes.length);
    modes.forEach((mode, row) => {
      const phi = shapeOf(mode);
      arriving.forEach((index, c) => {
        const x = coordinates[c];
        if (x === undefined) return;
        const mean = scaled(complex(along(phi, x.re), along(phi, x.im)), 1 / ports[mode.port].width);
        const a = complex(row === index ? 1 : 0);
        // through the near field: p + Z·u with u = Y'·(2a − p), less what arrives
        const velocity = times(seen(mode), minus(scaled(a, 2), mean));
        const leaves = minus(plus(mean, times(complex(0, mode.endReactance), velocity)), a);
        S.re[row * modes.length + index] = leaves.re;
        S.im[row * modes.length + index] = leaves.im;
      });
    });
    const scattering: Scattering = { modes, S };
    const quadratics = (arrives: number): Quadratic[] => {
      const x = coordinates[arriving.indexOf(arrives)];
      if (x === undefined) throw new RangeError(`arriving mode must travel, got mode ${arrives}`);
      return parts.map(({ stiffness, mass }) => ({ stiffness: quadratic(stiffness, x), mass: quadratic(mass, x) }));
    };
    return { scattering, fluids, quadratics };
  };
  return { order, solve };
};
