import { AIR_IMPEDANCE } from '../../quantities/index.ts';
import type { BoxInside, BoxLine } from './boxResult.ts';
import type { BoxSystem, Quadratic, SolvedLine } from './boxSystem.ts';
import type { Fluid } from './fluid.ts';
import { planeBlock, powerShare } from './scattering.ts';

/** Power absorbed by the fillings per unit height, W/m: Im(pᴴ·A·p)/2ω. */
const absorbed = (quadratics: readonly Quadratic[], fluids: readonly Fluid[], omega: number): number =>
  quadratics.reduce((sum, { stiffness, mass }, filling) => {
    const fluid = fluids[filling];
    if (fluid === undefined) return sum;
    return sum + (fluid.specificVolume.im * stiffness - omega * omega * fluid.compressibility.im * mass) / (2 * omega);
  }, 0);

const insideOf = ({ mesh, ports }: BoxSystem, solved: SolvedLine, frequency: number): BoxInside => {
  const omega = 2 * Math.PI * frequency;
  const { scattering, fluids } = solved;
  const other = scattering.modes.findIndex(({ port }) => port === 1);
  const [first, second] = [solved.quadratics(0), solved.quadratics(other)];
  const meanSquare = (all: readonly Quadratic[]): number => all.reduce((sum, { mass }) => sum + mass, 0) / mesh.area;
  const incident = ports[0].width / (2 * AIR_IMPEDANCE);
  const away = powerShare(scattering, ports, 0, 0) + powerShare(scattering, ports, 0, 1);
  return {
    imbalance: 1 - away - absorbed(first, fluids, omega) / incident,
    meanSquare: [meanSquare(first), meanSquare(second)],
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
