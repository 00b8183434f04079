import type { Result } from '../../contract/methods.ts';
import { LOW_NOTE } from './lowBands.ts';
import { ratingCells, ratingLabels } from './ratingRows.ts';
import { showFigure, showTable } from './table.ts';

/** The whole shell: what limits it, ratings, what gets out by part, R by band. @param names of parts by id */
export const showShell = (shell: Result<'shell'>, width: number, names: ReadonlyMap<string, string>): string => {
  const { parts, limiting, bands_Hz: bands, R_dB: R, spread_dB: spread } = shell;
  const named = (id: string): string => (names.has(id) ? `${names.get(id)} (${id})` : id);
  const share = parts.find((part) => part.id === limiting)?.share;
  const limit =
    limiting === null || share === undefined
      ? 'Nothing gets out.'
      : `${named(limiting)} limits the room: ${showFigure(share * 100)} % of what gets out leaves through it.`;
  return [
    limit,
    '',
    showTable(
      [
        { heading: 'Whole shell', cells: ratingLabels },
        { heading: '', cells: ratingCells(shell.ratings) },
      ],
      width,
    ),
    '',
    showTable(
      [
        { heading: 'Part', cells: parts.map((part) => named(part.id)) },
        { heading: 'Area, m²', cells: parts.map((part) => showFigure(part.area_m2, part.area_m2 < 0.1 ? 4 : 2)) },
        { heading: 'Share, %', cells: parts.map((part) => showFigure(part.share * 100, 1)) },
        {
          heading: 'Rw gained if perfect, dB',
          cells: parts.map((part) => showFigure(part.if_perfect_Rw_gain_dB)),
        },
      ],
      width,
    ),
    '',
    showTable(
      [
        { heading: 'Band, Hz', cells: bands.map(String) },
        { heading: 'R, dB', cells: R.map((value) => showFigure(value, 1)) },
        { heading: '±, dB', cells: spread.map((value) => showFigure(value, 0)) },
      ],
      width,
    ),
    '',
    LOW_NOTE,
  ].join('\n');
};
