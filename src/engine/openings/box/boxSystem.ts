import { complex, times } from '../../quantities/index.ts';
import { assemble } from './assembly.ts';
import type { BoxMesh, FillingEntries } from './boxMesh.ts';
import { denseMatrix } from './denseSolve.ts';
import type { DirectRoom } from './directRoom.ts';
import { fillingFluid } from './fillingFluid.ts';
import type { Fluid } from './fluid.ts';
import { columnProducts, portLoads } from './portLoads.ts';
import { portModes } from './portModes.ts';
import type { MeshPort } from './portShapes.ts';
import { drivenBy, scattering } from './scattering.ts';
import type { Scattering } from './scattering.ts';
import { backSubstitute, mixedColumns } from './treeBack.ts';
import type { NodalField } from './treeBack.ts';
import { treeFactor } from './treeFactor.ts';

/** A box on its mesh, ready for any frequency. */
export interface BoxSystem {
  readonly mesh: BoxMesh;
  readonly ports: readonly [MeshPort, MeshPort];
  /** clear height, m */
  readonly height: number;
}

/** pᴴ·K·p and pᴴ·M·p of one filling. */
export interface Quadratic {
  readonly stiffness: number;
  readonly mass: number;
}

/** A solved frequency; what is inside is made on demand from the factors. */
export interface SolvedLine {
  readonly scattering: Scattering;
  readonly fluids: readonly Fluid[];
  /** of each filling, when the given mode (place in the list of modes) arrives with unit amplitude */
  readonly quadratics: (arrives: number) => readonly Quadratic[];
}

/** Also the pressure itself. */
export interface DirectLine extends SolvedLine {
  readonly field: (arrives: number) => NodalField;
}

/** A field in the order of elimination, put at its nodes. */
const atNodes = (x: NodalField, number: Int32Array): NodalField => {
  const placed = { re: new Float64Array(number.length), im: new Float64Array(number.length) };
  for (let node = 0; node < number.length; node += 1) {
    const at = number[node] ?? 0;
    placed.re[node] = x.re[at] ?? 0;
    placed.im[node] = x.im[at] ?? 0;
  }
  return placed;
};

/** pᴴ·A·p of a real symmetric matrix given by its upper entries. */
const quadratic = ({ row, column }: FillingEntries, value: Float64Array, { re, im }: NodalField): number => {
  let sum = 0;
  for (let n = 0; n < value.length; n += 1) {
    const i = row[n] ?? 0;
    const j = column[n] ?? 0;
    const product = (re[i] ?? 0) * (re[j] ?? 0) + (im[i] ?? 0) * (im[j] ?? 0);
    sum += (i === j ? 1 : 2) * (value[n] ?? 0) * product;
  }
  return sum;
};

/**
 * The box at one frequency, by direct solution.
 * @param system mesh and ports
 * @param frequency f, Hz, > 0
 * @param room from directRoom; overwritten, so that fields must be asked for before the next frequency
 */
export const solveLine = (system: BoxSystem, frequency: number, room: DirectRoom): DirectLine => {
  const { mesh, ports, height } = system;
  const omega = 2 * Math.PI * frequency;
  const fluids = mesh.grid.fillings.map((filling) => fillingFluid(filling, frequency));
  assemble(mesh, ports, fluids, omega, room);
  const modes = portModes(ports, frequency, height);
  const { tree } = room.matrix;
  const columns = portLoads(modes, ports, tree);
  const inverse = treeFactor(room.matrix, columns);
  const pairs = columnProducts(columns, inverse);
  const G = denseMatrix(modes.length, modes.length);
  modes.forEach(({ port }, a) =>
    modes.forEach((_, b) => {
      const pair = pairs[a * modes.length + b] ?? complex(0);
      const factor = omega / ports[port].width;
      G.re[a * modes.length + b] = -pair.im * factor;
      G.im[a * modes.length + b] = pair.re * factor;
    }),
  );
  const solved = scattering(modes, G);
  const field = (arrives: number): NodalField => {
    const factors = drivenBy(solved, arrives).map((velocity) => times(complex(0, omega), velocity));
    const x = mixedColumns(columns, factors);
    backSubstitute(room.matrix, inverse, x);
    return atNodes(x, tree.number);
  };
  const quadratics = (arrives: number): Quadratic[] => {
    const p = field(arrives);
    return mesh.entries.map((entries) => ({
      stiffness: quadratic(entries, entries.stiffness, p),
      mass: quadratic(entries, entries.mass, p),
    }));
  };
  return { scattering: solved, fluids, field, quadratics };
};
