import type { Result } from '../../contract/methods.ts';
import { showFigure, showTable } from './table.ts';

/** Transmission loss by band, and what it cost. */
export const showBox = (box: Result<'box'> & { readonly seconds: number }, width: number): string =>
  [
    'Transmission loss of the box between two ducts without reflections at their ends.',
    'Solved in plan, with rigid partitions; never compared with a measurement. Above about 50 dB the walls of the box',
    'and gaps pass more than the way through the air: do not count on more.',
    '',
    showTable(
      [
        { heading: 'Band, Hz', cells: box.bands_Hz.map(String) },
        { heading: 'Plane wave, dB', cells: box.TL_plane_dB.map((it) => showFigure(it, 1)) },
        { heading: 'All waves, dB', cells: box.TL_multimode_dB.map((it) => showFigure(it, 1)) },
      ],
      width,
    ),
    '',
    `${box.unknowns} unknowns, ${showFigure(box.seconds, 1)} s.`,
  ].join('\n');
