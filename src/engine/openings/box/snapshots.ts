import { SOUND_SPEED } from '../../quantities/index.ts';
import type { BoxGeometry } from './boxGeometry.ts';
import type { BoxSystem } from './boxSystem.ts';
import { solveLine } from './boxSystem.ts';
import type { DirectRoom } from './directRoom.ts';

/** Snapshots per resonance of the box below the highest frequency: linings damp, so that fewer are wanted. */
const PER_MODE = { lined: 0.5, bare: 0.7 };

/** Modes of a rigid box seen in plan below a frequency: A·πf²/c² + P·f/2c. @source Weyl's count, in two dimensions */
const modesBelow = (frequency: number, { length, width }: BoxGeometry): number =>
  (Math.PI * length * width * frequency ** 2) / SOUND_SPEED ** 2 + ((length + width) * frequency) / SOUND_SPEED;

/** How many snapshots carry a reduced basis up to a frequency. @source convergence of lined and bare boxes, own runs */
export const snapshotCount = (geometry: BoxGeometry, highest: number): number => {
  const bare = geometry.base.kind === 'air' && geometry.linings.every(({ filling }) => filling.kind === 'air');
  return Math.ceil((bare ? PER_MODE.bare : PER_MODE.lined) * modesBelow(highest, geometry)) + 2;
};

/** Equally spaced in frequency, both ends included, Hz. */
export const snapshotFrequencies = (count: number, lowest: number, highest: number): number[] =>
  Array.from({ length: count }, (_, i) => lowest + ((highest - lowest) * i) / (count - 1));

/** Real and imaginary parts of the pressure for sound from either port at one frequency: four columns. */
export const snapshot = (system: BoxSystem, frequency: number, room: DirectRoom): Float64Array[] => {
  const solved = solveLine(system, frequency, room);
  const other = solved.scattering.modes.findIndex(({ port }) => port === 1);
  return [0, other].flatMap((arrives) => {
    const { re, im } = solved.field(arrives);
    return [re, im];
  });
};
