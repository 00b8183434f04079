import { sectionPerimeter } from '../quantities/index.ts';
import type { VentBox } from '../openings/index.ts';

/** Rectangular pieces of one size, m. */
export interface Piece {
  readonly name: string;
  /** of boards: which layer of the casing, innermost 0; null for partitions and lining */
  readonly layer: number | null;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly count: number;
}

/** What one baffled box is put together of: net sizes, holes for the ducts not taken off. */
export interface BoxQuantities {
  readonly boards: readonly Piece[];
  readonly partitions: readonly Piece[];
  readonly lining: readonly Piece[];
  /** beads of sealant: edges of every layer, feet of the partitions, round the ducts; m */
  readonly sealant: number;
  /** seal under one flat face that comes off, m */
  readonly lidSeal: number;
  /** outside, m */
  readonly outside: { readonly length: number; readonly width: number; readonly height: number };
}

/** One layer of a casing, from the inside of the box outwards. */
export interface CasingLayer {
  /** m */
  readonly thickness: number;
  /** a board, whose edges are sealed */
  readonly board: boolean;
}

/** How far a partition reaches into its box, m: as wide as the box less its gap and the lining that the gap is clear of. */
const partitionLength = ({ width, lining }: VentBox, { gap }: VentBox['partitions'][number]): number =>
  Math.max(0, width - gap - (lining?.thickness ?? 0));

const shellPieces = (box: VentBox, thicknesses: readonly number[]): readonly Piece[] => {
  let inner = { length: box.length, width: box.width, height: box.height };
  return thicknesses.flatMap((thickness, layer): Piece[] => {
    const { length, width, height } = inner;
    const [long, across] = [length + 2 * thickness, width + 2 * thickness];
    inner = { length: long, width: across, height: height + 2 * thickness };
    return [
      { name: 'flat face', layer, length: long, width: across, thickness, count: 2 },
      { name: 'long side', layer, length: long, width: height, thickness, count: 2 },
      { name: 'end', layer, length: width, width: height, thickness, count: 2 },
    ];
  });
};

/** Alike pieces as one line. */
const gathered = (pieces: readonly Piece[]): readonly Piece[] => {
  const key = ({ name, layer, length, width, thickness }: Piece): string =>
    JSON.stringify([name, layer, ...[length, width, thickness].map((size) => Math.round(size * 1e4))]);
  const lines = new Map<string, Piece>();
  for (const piece of pieces) {
    const same = lines.get(key(piece));
    lines.set(key(piece), same ? { ...same, count: same.count + piece.count } : piece);
  }
  return [...lines.values()].filter(({ length, width }) => length > 1e-4 && width > 1e-4);
};

/** Strips on the near or the far side: between the partitions that stand on it. */
const edgeStrips = (box: VentBox, side: 'N' | 'S', width: number, thickness: number): readonly Piece[] => {
  // a partition stands on the side that its gap does not lie at
  const standing = box.partitions.filter((partition) => partition.side !== side).toSorted((a, b) => a.at - b.at);
  const ends = [0, ...standing.flatMap((it) => [it.at, it.at + it.thickness]), box.length];
  return Array.from({ length: standing.length + 1 }, (_, i) => ({
    name: side === 'S' ? 'near side' : 'far side',
    layer: null,
    length: (ends[2 * i + 1] ?? box.length) - (ends[2 * i] ?? 0),
    width,
    thickness,
    count: 1,
  }));
};

const liningPieces = (box: VentBox): readonly Piece[] => {
  if (box.lining === null) return [];
  const { thickness, faces } = box.lining;
  const width = box.height - (faces ? 2 * thickness : 0);
  const strip = (name: string, length: number, count: number): Piece => ({
    name,
    layer: null,
    length,
    width,
    thickness,
    count,
  });
  return [
    ...edgeStrips(box, 'S', width, thickness),
    ...edgeStrips(box, 'N', width, thickness),
    strip('end', box.width - 2 * thickness, 2),
    ...box.partitions.map((partition) => strip('partition', partitionLength(box, partition) - thickness, 2)),
    ...(faces ? [{ ...strip('flat face', box.length, 2), width: box.width }] : []),
  ];
};

/**
 * Boards, lining, sealant and seal of one baffled box, from its inside sizes outwards: flat faces cover the sides, long
 * sides cover the ends; lining on the edges between the partitions and on both sides of each, ends between the strips
 * of the sides.
 * @param box inside, m
 * @param casing from the inside of the box outwards
 * @returns pieces, m; lengths of joint, m
 * @validity partitions that do not stand in each other's lining; lining of flat faces told whole, partitions stand in it
 * @source geometry
 */
export const boxQuantities = (box: VentBox, casing: readonly CasingLayer[]): BoxQuantities => {
  const thicknesses = casing.map(({ thickness }) => thickness);
  const within = (layers: number): number => 2 * thicknesses.slice(0, layers).reduce((sum, it) => sum + it, 0);
  const partitions = box.partitions.map((partition): Piece => ({
    name: 'partition',
    layer: null,
    length: partitionLength(box, partition),
    width: box.height,
    thickness: partition.thickness,
    count: 1,
  }));
  const edges = casing.reduce(
    (sum, { board }, layer) => sum + (board ? 4 * (box.length + box.width + box.height + 3 * within(layer)) : 0),
    0,
  );
  const feet = partitions.reduce((sum, { length, width }) => sum + 2 * length + width, 0);
  const around = box.ports.reduce((sum, { section }) => sum + sectionPerimeter(section), 0);
  const whole = within(casing.length);
  return {
    boards: gathered(shellPieces(box, thicknesses)),
    partitions: gathered(partitions),
    lining: gathered(liningPieces(box)),
    sealant: edges + feet + around * casing.filter(({ board }) => board).length,
    lidSeal: 2 * (box.length + box.width),
    outside: { length: box.length + whole, width: box.width + whole, height: box.height + whole },
  };
};

/** Area of pieces, m². */
export const pieceArea = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { length, width, count }) => sum + length * width * count, 0);
