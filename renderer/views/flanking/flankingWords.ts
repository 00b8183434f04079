import type { FlankingEntry } from '../../../src/project/schema.ts';

/** Ways round the parts in plain words. */
export const KIND_WORDS: Readonly<Record<FlankingEntry['kind'], string>> = {
  'slab-through': 'Floor slab',
  'soffit-through': 'Ceiling, roof boards or soffit',
  'wall-into-building': 'Wall',
};

export const JUNCTION_WORDS: Readonly<Record<FlankingEntry['junction'], { label: string; describe: string }>> = {
  'rigid-t': { label: 'Heavy, a T', describe: 'cast or built together; the wall between ends there' },
  'rigid-cross': { label: 'Heavy, a cross', describe: 'cast or built together; the wall between goes on beyond' },
  'flexible-t': { label: 'Heavy, elastic strip', describe: 'the wall between stands on or under elastic strips' },
  lightweight: { label: 'Timber frames', describe: 'framed wall, floor or roof' },
};

export const RUN_WORDS: Readonly<Record<FlankingEntry['run'], { label: string; describe: string }>> = {
  straight: { label: 'Straight on', describe: 'in and out by the same slab, soffit or wall' },
  corner: { label: 'Round the corner', describe: 'in by one element, out by the one across it' },
};
