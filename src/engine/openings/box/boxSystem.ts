import { complex, times } from '../../quantities/index.ts';
import type { Complex } from '../../quantities/index.ts';
import { assemble } from './assembly.ts';
import { backSubstitute, mixedColumns } from './bandBack.ts';
import type { NodalField } from './bandBack.ts';
import { bandFactor } from './bandFactor.ts';
import type { BandMatrix } from './bandFactor.ts';
import type { BoxMesh, FillingEntries } from './boxMesh.ts';
import { denseMatrix } from './denseSolve.ts';
import { fillingFluid } from './fillingFluid.ts';
import type { Fluid } from './fluid.ts';
import { columnProducts, portLoads } from './portLoads.ts';
import { portModes } from './portModes.ts';
import type { MeshPort } from './portShapes.ts';
import { drivenBy, scattering } from './scattering.ts';
import type { Scattering } from './scattering.ts';

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

/** Room for one factorisation, used again for every frequency. */
export const bandRoom = ({ unknowns, halfBandwidth }: BoxMesh): BandMatrix => ({
  size: unknowns,
  half: halfBandwidth,
  re: new Float64Array(unknowns * (halfBandwidth + 1)),
  im: new Float64Array(unknowns * (halfBandwidth + 1)),
});

/**
 * The box at one frequency, by direct solution.
 * @param system mesh and ports
 * @param frequency f, Hz, > 0
 * @param room from bandRoom; overwritten, so that fields must be asked for before the next frequency
 */
export const solveLine = (system: BoxSystem, frequency: number, room: BandMatrix): DirectLine => {
  const { mesh, ports, height } = system;
  const omega = 2 * Math.PI * frequency;
  const fluids = mesh.grid.fillings.map((filling) => fillingFluid(filling, frequency));
  assemble(mesh, ports, fluids, omega, room);
  const modes = portModes(ports, frequency, height);
  const { columns, place } = portLoads(modes, ports, mesh.unknowns);
  const inverse = bandFactor(room, columns);
  const pairs = columnProducts(columns, inverse);
  const G = denseMatrix(modes.length, modes.length);
  modes.forEach(({ port }, a) =>
    modes.forEach((_, b) => {
      const pair = pairs[(place[a] ?? 0) * modes.length + (place[b] ?? 0)] ?? complex(0);
      const factor = omega / ports[port].width;
      G.re[a * modes.length + b] = -pair.im * factor;
      G.im[a * modes.length + b] = pair.re * factor;
    }),
  );
  const solved = scattering(modes, G);
  const field = (arrives: number): NodalField => {
    const factors = new Array<Complex>(modes.length).fill(complex(0));
    drivenBy(solved, arrives).forEach((velocity, mode) => {
      factors[place[mode] ?? 0] = times(complex(0, omega), velocity);
    });
    const x = mixedColumns(columns, factors);
    backSubstitute(room, inverse, x);
    return x;
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
