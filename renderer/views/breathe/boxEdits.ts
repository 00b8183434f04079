import type { VentElementEntry } from '../../../src/project/schema.ts';

type BoxEntry = Extract<VentElementEntry, { kind: 'box' }>;
type Partition = BoxEntry['partitions'][number];

const THICKNESS_MM = 18;
const MOST_PARTITIONS = 12;

const endOf = ({ at_m, thickness_mm }: Partition): number => at_m + (thickness_mm ?? 12) / 1000;

/** The box with one more partition in the middle of its longest compartment; null where none fits. */
export const partitionAdded = (box: BoxEntry): BoxEntry | null => {
  const lining = (box.lining?.thickness_mm ?? 0) / 1000;
  const walls = [0, ...box.partitions.flatMap((it) => [it.at_m, endOf(it)]), box.length_m];
  const rooms = Array.from({ length: box.partitions.length + 1 }, (_, i) => ({
    index: i,
    from: walls[2 * i] ?? 0,
    to: walls[2 * i + 1] ?? box.length_m,
  }));
  const longest = rooms.reduce((best, room) => (room.to - room.from > best.to - best.from ? room : best));
  const needed = THICKNESS_MM / 1000 + 4 * lining + 0.06;
  if (box.partitions.length >= MOST_PARTITIONS || longest.to - longest.from < needed) return null;
  const beside = box.partitions[longest.index - 1] ?? box.partitions[longest.index];
  const added: Partition = {
    at_m: Number(((longest.from + longest.to) / 2 - THICKNESS_MM / 2000).toFixed(3)),
    gap_mm: beside?.gap_mm ?? Math.min(120, Math.round((box.width_m * 1000) / 4)),
    side: beside?.side === 'far' ? 'near' : 'far',
    thickness_mm: THICKNESS_MM,
  };
  return { ...box, partitions: box.partitions.toSpliced(longest.index, 0, added) };
};
