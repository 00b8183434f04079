import { AIR_DENSITY, AIR_IMPEDANCE, SOUND_SPEED, complex, decayingRoot, scaled } from '../../quantities/index.ts';
import type { Complex } from '../../quantities/index.ts';
import { faceEndLength } from './faceEnd.ts';
import type { MeshPort } from './portShapes.ts';

/** Decaying modes of a side port that are kept beside those that travel. */
const EVANESCENT = 2;

/** One mode of a port at one frequency. */
export interface PortMode {
  readonly port: 0 | 1;
  readonly mode: number;
  readonly propagates: boolean;
  /** axial wavenumber k_m, 1/m, Im ≤ 0 */
  readonly wavenumber: Complex;
  /** velocity over pressure, m/(Pa·s) */
  readonly admittance: Complex;
  /** what the port's local term in the matrix stands for, m/(Pa·s); 0 on a face */
  readonly local: number;
  /** of the near field between duct and strip, Pa·s/m; 0 on an edge */
  readonly endReactance: number;
}

/** Modes of one port: those that travel and the next two; a face port has the plane one. */
const modesOf = (port: MeshPort, index: 0 | 1, frequency: number, height: number): PortMode[] => {
  const omega = 2 * Math.PI * frequency;
  const k = omega / SOUND_SPEED;
  const side = port.kind === 'side';
  const propagating = side ? Math.floor((k * port.width) / Math.PI - 1e-12) + 1 : 1;
  const kept = side ? propagating + EVANESCENT : 1;
  return Array.from({ length: kept }, (_, mode): PortMode => {
    const wavenumber = decayingRoot(complex(k * k - ((mode * Math.PI) / port.width) ** 2));
    return {
      port: index,
      mode,
      propagates: mode < propagating,
      wavenumber,
      admittance: scaled(wavenumber, 1 / (AIR_DENSITY * omega)),
      local: side ? 1 / AIR_IMPEDANCE : 0,
      endReactance: side ? 0 : omega * AIR_DENSITY * faceEndLength(port.area, height),
    };
  });
};

/** All modes of both ports, first port first; ψ_0 = 1, ψ_m = √2·cos(mπs/w), k_m = √(k² − (mπ/w)²). */
export const portModes = (ports: readonly [MeshPort, MeshPort], frequency: number, height: number): PortMode[] => [
  ...modesOf(ports[0], 0, frequency, height),
  ...modesOf(ports[1], 1, frequency, height),
];
