import { structureOf } from '../assembly/index.ts';
import type { Assembly, Structure } from '../assembly/index.ts';
import type { Resolution } from './prediction.ts';
import type { LeafModel, Stack } from './stack.ts';

const WALL: readonly [number, number] = [4, 2.5];
const WINDOW: readonly [number, number] = [1.48, 1.23];
/** One board as sold. */
const SHEET: readonly [number, number] = [2.4, 1.2];

/**
 * Size a laboratory would test a part in: 4 × 2.5 m, parts all of glass 1.48 × 1.23 m, a bare board as one sheet of
 * 2.4 × 1.2 m.
 * @source walls and glass: ISO 10140-5:2021; sheets: common practice (size as sold), between the openings of 2 and 10 m²
 *   that ISO 12354-1:2017, table B.1, reckons with
 */
export const laboratorySize = (assembly: Assembly): readonly [number, number] => {
  const { leaves } = structureOf(assembly);
  const [only] = leaves;
  if (only && leaves.every((leaf) => leaf.glass)) return WINDOW;
  return only && leaves.length === 1 && !only.masonry ? SHEET : WALL;
};

/**
 * Lines per band and angles: more lines where three leaves or very low losses make sharp resonances, more angles where
 * a masonry leaf or low losses make sharp coincidence.
 * @source convergence against 96 × 1200 and 24 × 1200: within 0.15 dB; masonry 0.3 dB, with three leaves 0.35 dB
 */
export const fineness = (structure: Structure, stack: Stack, resolution: Resolution): readonly [number, number] => {
  if (resolution === 'draft') return [6, 90];
  const lowLoss = stack.leaves.some((leaf: LeafModel) =>
    leaf.plates.some((plate) => plate.bending > 0 && plate.bendingLoss < 0.01 * plate.bending),
  );
  const masonry = structure.leaves.some((leaf) => leaf.masonry);
  const lines = lowLoss || structure.leaves.length > 2 ? 24 : 12;
  return [lines, lowLoss || masonry ? 240 : 160];
};
