import type { Result } from '../../contract/methods.ts';
import { ratingCells, ratingLabels } from './ratingRows.ts';
import { showTable } from './table.ts';

/** Ratings one below the other; a dash where the curve lacks a band that the rating needs. */
export const showRate = ({ ratings }: Result<'rate'>, width: number): string =>
  showTable(
    [
      { heading: 'Rating', cells: ratingLabels },
      { heading: 'dB', cells: ratingCells(ratings) },
    ],
    width,
  );
