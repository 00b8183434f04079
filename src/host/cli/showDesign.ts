import type { Result } from '../../contract/methods.ts';
import { showFigure, showTable, type Column } from './table.ts';

type Designs = Result<'designVents'>;
type Design = Designs['designs'][number];

const WAYS: Readonly<Record<string, string>> = {
  air: 'the open way',
  casing: 'the boards of the box',
  'duct-wall': 'the wall of the duct',
  joints: 'joints and edges',
};

const sizes = ({ box }: Design): string =>
  box ? [box.length_m, box.width_m, box.height_m].map((it) => showFigure(it, 2)).join(' × ') : '–';

const columns = (designs: Designs['designs']): readonly Column[] => {
  const cells = (cell: (it: Design) => string): string[] => designs.map(cell);
  return [
    { heading: 'Opening', cells: cells(({ opening }) => opening) },
    { heading: 'Enough', cells: cells(({ found }) => (found ? 'yes' : 'no')) },
    { heading: 'Air, L/s', cells: cells(({ flow_L_s }) => showFigure(flow_L_s, 1)) },
    { heading: 'Duct, mm', cells: cells(({ box }) => showFigure(box?.duct_diameter_mm)) },
    { heading: 'Boxes', cells: cells(({ boxes }) => showFigure(boxes)) },
    { heading: 'Inside, m', cells: cells(sizes) },
    { heading: 'Partitions', cells: cells(({ box }) => showFigure(box?.partitions)) },
    { heading: 'Gap, mm', cells: cells(({ box }) => showFigure(box?.gap_mm)) },
    { heading: 'Lining, mm', cells: cells(({ box }) => showFigure(box?.lining_mm)) },
    { heading: 'Lined duct, m', cells: cells(({ lined_duct_m }) => showFigure(lined_duct_m, 1)) },
    { heading: 'Room, m³', cells: cells(({ volume_m3 }) => showFigure(volume_m3, 2)) },
    { heading: 'kg each', cells: cells(({ weight_kg }) => showFigure(weight_kg)) },
    { heading: 'Pa', cells: cells(({ loss_Pa }) => showFigure(loss_Pa, 1)) },
    { heading: 'm/s', cells: cells(({ speed_m_s }) => showFigure(speed_m_s, 1)) },
    { heading: 'Dn,e,w, dB', cells: cells(({ Dnew_dB }) => showFigure(Dnew_dB)) },
    { heading: 'Costs, dB', cells: cells(({ cost_dB, box }) => (box ? showFigure(cost_dB, 1) : '–')) },
  ];
};

/** What each vent is built of, what limits it, its bass, and what the answer stands on. */
const sentences = (it: Design): readonly string[] => {
  const { tried, worst_bass: bass } = it;
  if (!it.box) return [`${it.opening}: no duct that was tried carries the air quietly; share it among more vents.`];
  const ways = it.limits.map(({ way, cost_dB }) => `${WAYS[way] ?? way} ${showFigure(cost_dB, 1)} dB`).join(', ');
  const loss = bass?.insertion_loss_dB ?? 0;
  const against = loss < 0 ? `${showFigure(-loss, 1)} dB more than` : `${showFigure(loss, 1)} dB less than`;
  return [
    `${it.opening}: ${it.boxes === 2 ? 'boxes' : 'box'} as "${it.casing ?? ''}".`,
    `  Alone each way would cost: ${ways}. Half of it passes at ${it.bands_Hz.join(', ')} Hz.`,
    ...(bass
      ? [`  In the bass it is worst at ${bass.band_Hz} Hz: with the fan off ${against} an open hole lets through.`]
      : []),
    ...(it.cost_of_one_box_dB === null
      ? []
      : [`  One box alone would cost ${showFigure(it.cost_of_one_box_dB, 1)} dB at best.`]),
    ...(!it.found && it.floor_dB !== null
      ? [`  Were the boxes perfect, joints and edges would still cost ${showFigure(it.floor_dB, 1)} dB.`]
      : []),
    `  ${tried.boxes} boxes of different inside for the two narrowest ducts that carry the air, in ${tried.airy} ways to build them; ${tried.coarse} of them solved at 20 mm up to 400 Hz, ${tried.whole} of these in all bands, ${tried.fine} on the fine grid.`,
  ];
};

/** The smallest vent for each opening. */
export const showDesign = ({ designs, most_cost_dB: most, bass }: Designs, width: number): string => {
  if (designs.length === 0) return 'This project has no opening of kind vent to design a box for.';
  const range = bass ? 'music rich in bass, from 50 Hz' : 'A-weighted, 100 Hz to 3.15 kHz';
  return [
    `Smallest boxes for each vent, so that the vents of a wall cost it at most ${showFigure(most, 1)} dB (${range}; fans standing).`,
    'Of two boxes one stands in the room, one outside. Where it is not enough, the nearest is shown.',
    '',
    showTable(columns(designs), width),
    '',
    ...designs.flatMap(sentences),
  ].join('\n');
};
