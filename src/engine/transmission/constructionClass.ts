import type { Leaf, Structure } from '../assembly/index.ts';
import { connectionOf } from './connection.ts';

const isFloor = (leaves: readonly Leaf[]): boolean => {
  const woods = leaves.map((leaf) => leaf.boards.some((board) => board.material.family === 'wood'));
  return woods.includes(true) && woods.includes(false);
};

/** The widest cavity decides what kind of part it is. */
const framedClass = (structure: Structure): string => {
  const pairs = structure.cavities.flatMap((cavity, i) => {
    const first = structure.leaves[i];
    const second = structure.leaves[i + 1];
    return first && second ? [{ cavity, connection: connectionOf(first, cavity, second) }] : [];
  });
  const main = pairs.reduce<(typeof pairs)[number] | undefined>(
    (best, pair) => (!best || pair.cavity.depth > best.cavity.depth ? pair : best),
    undefined,
  );
  if (!main) return 'other';
  const filled = main.cavity.fills.some((fill) => fill.material.kind === 'porous') ? 'filled' : 'empty';
  const { frame } = main.cavity;
  const deep = main.cavity.depth >= 0.18 && isFloor(structure.leaves);
  switch (main.connection) {
    case 'glazed':
      return 'double glazing';
    case 'free':
      return `separate leaves, ${filled}`;
    case 'twin':
      return `stud wall: twin, ${filled}`;
    case 'staggered':
      return `stud wall: staggered${frame?.fixing === 'direct' ? '' : ' with bars'}, ${filled}`;
    case 'bars':
      if (deep) return `floor: bars, ${filled}`;
      return `stud wall: ${frame?.stud === 'steel' ? 'steel' : 'timber'} with bars, ${filled}`;
    default:
      if (deep) return `floor: direct, ${filled}`;
      return `stud wall: ${frame?.stud === 'steel' ? 'steel' : 'timber'}, ${filled}`;
  }
};

const BOTH = ['empty', 'filled'] as const;
const STUDS = ['timber', 'steel', 'timber with bars', 'steel with bars', 'staggered', 'staggered with bars', 'twin'];

/** Every class there is. @see constructionClass */
export const CONSTRUCTION_CLASSES: readonly string[] = [
  'single board',
  'glass',
  'double glazing',
  'masonry',
  'masonry with lining',
  ...STUDS.flatMap((studs) => BOTH.map((fill) => `stud wall: ${studs}, ${fill}`)),
  ...BOTH.map((fill) => `separate leaves, ${fill}`),
  ...['direct', 'bars'].flatMap((fixing) => BOTH.map((fill) => `floor: ${fixing}, ${fill}`)),
];

/**
 * The class of construction whose measured record tells how far the prediction can be trusted.
 * @param structure leaves and cavities
 * @returns class in plain words, for example `stud wall: timber, filled`
 * @validity classes as sorted in tests/reference/tl
 * @source common practice
 * @example constructionClass(structureOf(wall)) // 'stud wall: timber, filled'
 */
export const constructionClass = (structure: Structure): string => {
  const { leaves } = structure;
  const masonry = leaves.some((leaf) => leaf.masonry);
  const only = leaves[0];
  if (leaves.length === 1 && only) {
    if (masonry) return 'masonry';
    if (only.glass) return 'glass';
    return 'single board';
  }
  if (masonry) return 'masonry with lining';
  return framedClass(structure);
};
