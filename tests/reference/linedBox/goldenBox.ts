import type { BoxGeometry } from '../../../src/engine/openings/index.ts';
import { readBoxGeometry } from '../../../src/service/readBoxGeometry.ts';
import golden from './golden.json' with { type: 'json' };

/** One of the thirteen boxes, as printed. */
export type GoldenBox = (typeof golden.boxes)[number];

export const goldenBoxes: readonly GoldenBox[] = golden.boxes;

/** A box by the first letters of its name. @throws Error where it is missing */
export const goldenBox = (name: string): GoldenBox => {
  const found = golden.boxes.find((box) => box.name.startsWith(name));
  if (found === undefined) throw new Error(`reference box ${name} is missing`);
  return found;
};

export const geometryOf = ({ geometry }: GoldenBox): BoxGeometry => {
  const read = readBoxGeometry(geometry, []);
  if (read === null) throw new Error('a reference box cannot be read');
  return read;
};

/** Its ducts are 100 mm long on either side; the plain hole too. */
export const DUCT_LENGTH = 0.1;
export const GOLDEN_CELL = 0.008;
export const GOLDEN_BANDS: readonly number[] = golden.bands;

/** A duct in the flat face: its end correction is summed further here than there. */
export const inFlatFace = ({ geometry }: GoldenBox): boolean => geometry.ports.some(({ side }) => side === 'F');

/** Lined on the flat faces: the mode across the height is found there by 1-D elements. */
export const linedFaces = ({ geometry }: GoldenBox): boolean => geometry.base !== null;

export const bare = ({ geometry }: GoldenBox): boolean => geometry.linings.length === 0;

/** Absolute differences, dB. */
export const differences = (computed: readonly number[], printed: readonly number[]): number[] =>
  printed.map((it, i) => Math.abs((computed[i] ?? Number.NaN) - it));

export const meanOf = (values: readonly number[]): number => values.reduce((sum, it) => sum + it, 0) / values.length;
