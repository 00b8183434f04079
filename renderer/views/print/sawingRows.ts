import { pieceArea, type BoxTakeoff } from '../../../src/project/ventTakeoff.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { lengthWords, sizeWords } from './sizeWords.ts';

/** One size of piece to saw or cut. */
export interface SawingRow {
  readonly what: string;
  readonly of: string;
  readonly thickness: string;
  readonly size: string;
  readonly count: number;
  /** m², of all of them */
  readonly area: number;
}

/** Boards of the casing layer by layer, partitions, then lining. */
export const sawingRows = ({ quantities, casing, lining }: BoxTakeoff, units: LengthUnits): readonly SawingRow[] => {
  const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
  const inmost = casing.find(({ board }) => board)?.name ?? '';
  const row = (what: string, of: string, piece: BoxTakeoff['quantities']['boards'][number]): SawingRow => ({
    what,
    of,
    thickness: lengthWords(piece.thickness, units),
    size: sizeWords([piece.length, piece.width], units),
    count: piece.count,
    area: pieceArea([piece]),
  });
  return [
    ...quantities.boards
      .filter(({ layer }) => casing[layer ?? 0]?.kg_m2 !== 0)
      .map((piece) => row(capital(piece.name), casing[piece.layer ?? 0]?.name ?? '', piece)),
    ...quantities.partitions.map((piece) => row('Partition', inmost, piece)),
    ...quantities.lining.map((piece) => row(`Lining, ${piece.name}`, lining?.name ?? '', piece)),
  ];
};
