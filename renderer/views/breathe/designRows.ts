import type { VentWayKind } from '../../../src/engine/openings/index.ts';
import type { DesignFound, DesignedVent } from '../../../src/worker/breathe/designAnswer.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { showFlow, showSpeed } from '../../text/showFlow.ts';
import { showQuantity } from '../../text/showNumber.ts';

type Row = readonly [name: string, words: string];

const WAYS: Readonly<Record<VentWayKind, string>> = {
  air: 'the open way',
  casing: 'the boards',
  'duct-wall': 'the wall of the duct',
  joints: 'joints and edges',
};

const CUBIC_FOOT = 0.0283168;

const showVolume = (volume: number, units: LengthUnits): string =>
  units === 'imperial' ? `${(volume / CUBIC_FOOT).toFixed(1)} ft³` : `${volume.toFixed(2)} m³`;

const showMillimetres = (metres: number, units: LengthUnits): string =>
  showQuantity(Math.round(metres * 1000), 'mm', units);

/** Where the duct does not go through the opening as it is drawn. */
const holeRows = ({ ductDiameter }: DesignedVent, { hole }: DesignFound, units: LengthUnits): readonly Row[] => {
  if (Math.min(hole.width, hole.height) >= ductDiameter) return [];
  const mm = (metres: number): string => showMillimetres(metres, units);
  return [['Hole in the wall', `at least ${mm(ductDiameter)}; it is drawn ${mm(hole.width)} × ${mm(hole.height)}`]];
};

const builtRows = (vent: DesignedVent, units: LengthUnits): readonly Row[] => {
  const mm = (metres: number): string => showMillimetres(metres, units);
  const ways = vent.partitions === 1 ? '1, which leaves' : `${vent.partitions}, from alternate sides; each leaves`;
  const weight = showQuantity(Math.round(vent.weight), 'kg', units);
  const layers = vent.layers.map(({ name, thickness }) => `${name} ${mm(thickness)}`).join(', ');
  return [
    ['Duct', `${mm(vent.ductDiameter)} across`],
    [
      vent.boxes === 2 ? 'Two boxes, inside' : 'Box, inside',
      `${mm(vent.length)} × ${mm(vent.width)} × ${mm(vent.height)}${vent.boxes === 2 ? ', one in the room, one outside' : ''}`,
    ],
    [
      'Built of',
      `${vent.casing.replace(/^Vent box of /, '')} (${layers}), about ${weight}${vent.boxes === 2 ? ' each' : ''}`,
    ],
    ['Lining', `${mm(vent.lining)} of mineral wool on the edges and partitions`],
    ['Partitions', `${ways} a gap of ${mm(vent.gap)}`],
    ...(vent.linedDuct > 0
      ? [['Lined duct', `${mm(vent.linedDuct)} behind the box, ${mm(vent.ductLining)} of wool round it`] as const]
      : []),
    ...vent.widened.map(({ name, diameter }): Row => [name, `made wider, ${mm(diameter)}`]),
    ['Room it takes', `${showVolume(vent.volume, units)}, boards and all`],
  ];
};

/** So much more bass than an open hole is told with what to do about it, dB. */
const BOOMING = -3;

/** So much of the air that is needed counts as enough, and the other way round. */
const ENOUGH_AIR = 0.9;

/** What lets most through: each way by itself, and the bands. */
const limitRows = ({ limits }: DesignedVent, counted: boolean): readonly Row[] => {
  const { bass } = limits;
  const hint = bass.loss < BOOMING && !counted ? '; count from 50 Hz if that matters' : '';
  const against = bass.loss < 0 ? 'more' : 'less';
  return [
    ['Each way alone', limits.ways.map(({ kind, cost }) => `${WAYS[kind]} ${cost.toFixed(1)} dB`).join(', ')],
    ['Half of it passes', `at ${limits.bands.join(', ')} Hz`],
    [
      'Bass',
      `worst at ${bass.band} Hz: ${Math.abs(bass.loss).toFixed(1)} dB ${against} than an open hole, with the fan off${hint}`,
    ],
  ];
};

const oneBoxRows = ({ oneBox }: DesignFound, units: LengthUnits): readonly Row[] => {
  if (!oneBox) return [];
  const sides = [oneBox.length, oneBox.width, oneBox.height].map((side) => showMillimetres(side, units));
  return [
    [
      'With one box',
      `${oneBox.cost.toFixed(1)} dB at best, ${sides.join(' × ')} inside${oneBox.linedDuct > 0 ? ', and a lined duct' : ''}`,
    ],
  ];
};

/** Where the fans as they are move clearly less or more than the people need. */
const fanRows = ({ inPlace }: DesignedVent, needed: number, units: LengthUnits): readonly Row[] => {
  const { flow } = inPlace;
  if (flow === 0 || (flow >= ENOUGH_AIR * needed && flow <= needed / ENOUGH_AIR)) return [];
  const way = flow < needed ? 'too little: a stronger fan' : 'more than enough: slow it down';
  return [['Fans as they are', `move ${showFlow(flow, units)} for ${showFlow(needed, units)} needed, ${way}`]];
};

/** What was found, one line for each thing to build or to know. */
export const designRows = (found: DesignFound, units: LengthUnits): readonly Row[] => {
  const { vent, flow, count, bass } = found;
  if (!vent) return [];
  const { rating, cost } = vent.inPlace;
  return [
    ...builtRows(vent, units),
    ...holeRows(vent, found, units),
    ['Air', `${showFlow(flow, units)} at ${showSpeed(vent.speed, units)}, takes ${vent.loss.toFixed(0)} Pa`],
    [
      'Costs the wall',
      `${vent.cost.toFixed(1)} dB${count > 1 ? `, its ${count} vents together` : ''}${bass ? ', counted from 50 Hz' : ''}`,
    ],
    ...fanRows(vent, flow, units),
    ...oneBoxRows(found, units),
    ...limitRows(vent, found.bass),
    [
      'Once it is in',
      `Dn,e,w ${rating ?? '–'} dB, costs the wall ${cost.toFixed(1)} dB${count > 1 ? ' by itself' : ''}${bass ? ' from 100 Hz on' : ''}, fans running`,
    ],
  ];
};
