import { AIR_DENSITY, SOUND_SPEED } from '../../quantities/index.ts';
import type { NodalField } from './bandBack.ts';
import type { BoxInside, BoxLine } from './boxResult.ts';
import type { BoxSystem, SolvedLine } from './boxSystem.ts';
import type { FillingEntries } from './boxMesh.ts';
import { planeBlock, powerShare } from './scattering.ts';

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

/** Power absorbed by the fillings per unit height, W/m: Im(pᴴ·A·p)/2ω. */
const absorbed = ({ mesh }: BoxSystem, { fluids }: SolvedLine, omega: number, p: NodalField): number =>
  mesh.entries.reduce((sum, entries, filling) => {
    const fluid = fluids[filling];
    if (fluid === undefined) return sum;
    const stiff = fluid.specificVolume.im * quadratic(entries, entries.stiffness, p);
    const inert = omega * omega * fluid.compressibility.im * quadratic(entries, entries.mass, p);
    return sum + (stiff - inert) / (2 * omega);
  }, 0);

const meanSquare = ({ mesh }: BoxSystem, p: NodalField): number =>
  mesh.entries.reduce((sum, entries) => sum + quadratic(entries, entries.mass, p), 0) / mesh.area;

const insideOf = (system: BoxSystem, solved: SolvedLine, frequency: number): BoxInside => {
  const omega = 2 * Math.PI * frequency;
  const { scattering } = solved;
  const other = scattering.modes.findIndex(({ port }) => port === 1);
  const fields = [solved.field(0), solved.field(other)] as const;
  const incident = system.ports[0].width / (2 * AIR_DENSITY * SOUND_SPEED);
  const away = powerShare(scattering, system.ports, 0, 0) + powerShare(scattering, system.ports, 0, 1);
  return {
    imbalance: 1 - away - absorbed(system, solved, omega, fields[0]) / incident,
    meanSquare: [meanSquare(system, fields[0]), meanSquare(system, fields[1])],
  };
};

/** What is kept of a solved frequency. @param inside whether energy balance and mean pressure are wanted */
export const boxLine = (system: BoxSystem, solved: SolvedLine, frequency: number, inside: boolean): BoxLine => {
  const { scattering } = solved;
  const [s11, s12, s21, s22] = planeBlock(scattering);
  const modal = scattering.modes.flatMap((mode, index) =>
    mode.port === 0 && mode.propagates ? [powerShare(scattering, system.ports, index, 1)] : [],
  );
  return {
    frequency,
    plane: { s11, s12, s21, s22 },
    modal,
    planeToPlane: powerShare(scattering, system.ports, 0, 1, true),
    inside: inside ? insideOf(system, solved, frequency) : null,
  };
};
