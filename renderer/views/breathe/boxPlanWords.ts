import type { VentBox, VentPort } from '../../../src/engine/openings/index.ts';

/** How a length is said, from m. */
export type SaySize = (metres: number) => string;

/** A side of the plan, as one looks at it. */
const SIDES: Readonly<Record<VentPort['side'], string>> = {
  W: 'left end',
  E: 'right end',
  S: 'near side',
  N: 'far side',
  face: 'flat face',
};

export const portWords = ({ ports }: VentBox, index: 0 | 1, size: SaySize): string => {
  const { side, at } = ports[index];
  const from = side === 'W' || side === 'E' ? 'near side' : 'left';
  return `${index === 0 ? 'Duct from the room' : 'Duct outwards'}, ${SIDES[side]}, ${size(at)} from the ${from}`;
};

export const partitionWords = ({ partitions }: VentBox, index: number, size: SaySize): string => {
  const it = partitions[index];
  if (!it) return '';
  const place = `${size(it.at)} from the left, gap ${size(it.gap)} at the ${SIDES[it.side]}`;
  return `Partition ${index + 1} of ${partitions.length}: ${place}`;
};
