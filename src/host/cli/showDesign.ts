import type { Result } from '../../contract/methods.ts';
import { showFigure, showTable } from './table.ts';

/** The smallest box for each vent opening. */
export const showDesign = ({ designs, most_cost_dB: most }: Result<'designVents'>, width: number): string => {
  if (designs.length === 0) return 'This project has no opening of kind vent to design a box for.';
  const cells = (cell: (it: (typeof designs)[number]) => string): string[] => designs.map(cell);
  return [
    `Smallest box for each vent, so that the vents of a wall cost it at most ${showFigure(most, 1)} dB (A-weighted, 100 Hz to 3.15 kHz).`,
    'Inside sizes; walls of 25 kg/m², such as two boards of 18 mm; lining on edges and partitions.',
    '',
    showTable(
      [
        { heading: 'Opening', cells: cells(({ opening }) => opening) },
        { heading: 'Air, L/s', cells: cells(({ flow_L_s }) => showFigure(flow_L_s, 1)) },
        { heading: 'Duct, mm', cells: cells(({ box }) => showFigure(box?.duct_diameter_mm)) },
        {
          heading: 'Box, m',
          cells: cells(({ box }) =>
            box ? [box.length_m, box.width_m, box.height_m].map((it) => showFigure(it, 2)).join(' × ') : '–',
          ),
        },
        { heading: 'Partitions', cells: cells(({ box }) => showFigure(box?.partitions)) },
        { heading: 'Gap, mm', cells: cells(({ box }) => showFigure(box?.gap_mm)) },
        { heading: 'Lining, mm', cells: cells(({ box }) => showFigure(box?.lining_mm)) },
        { heading: 'Pa', cells: cells(({ loss_Pa }) => showFigure(loss_Pa, 1)) },
        { heading: 'm/s', cells: cells(({ speed_m_s }) => showFigure(speed_m_s, 1)) },
        { heading: 'Dn,e,w, dB', cells: cells(({ Dnew_dB }) => showFigure(Dnew_dB)) },
        { heading: 'Costs, dB', cells: cells(({ cost_dB, box }) => (box ? showFigure(cost_dB, 1) : '–')) },
        { heading: 'Enough', cells: cells(({ found }) => (found ? 'yes' : 'no')) },
      ],
      width,
    ),
    ...(designs.some(({ found }) => !found)
      ? [
          '',
          'Where it is not enough, the nearest is shown: heavier boxes, two of them in a row, or more vents for the same air help. Without a box, no duct of the grid carries the air quietly.',
        ]
      : []),
  ].join('\n');
};
