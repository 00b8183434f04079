import type { VentWayKind } from '../../../src/engine/openings/index.ts';
import type { DesignFound } from '../../../src/worker/breathe/designAnswer.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { showFlow, showSpeed } from '../../text/showFlow.ts';
import { showQuantity } from '../../text/showNumber.ts';

const LIMITS: Readonly<Record<VentWayKind, string>> = {
  air: 'the open way through the box',
  casing: 'the boards of the box',
  'duct-wall': 'the wall of the duct',
  joints: 'the joints around it',
};

/** What came of the search, in a sentence. */
export const designWords = ({ enough, box, flow, mostCost, terms }: DesignFound, units: LengthUnits): string => {
  if (!box)
    return `No duct that was tried carries ${showFlow(flow, units)} quietly (${showSpeed(terms.mostSpeed, units)} and ${terms.mostLoss} Pa at most). Share the air among more vents.`;
  if (enough) return `This one costs the wall ${box.cost.toFixed(1)} dB, not more than the ${mostCost} dB asked for.`;
  return `No box that was tried is enough: the nearest costs the wall ${box.cost.toFixed(1)} dB, not ${mostCost} dB. Two boxes in a row, heavier boards, or more vents for the same air help.`;
};

/** The box, one line for each thing to build or to know. */
export const designRows = ({ box, flow, count }: DesignFound, units: LengthUnits): readonly (readonly string[])[] => {
  if (!box) return [];
  const mm = (value: number): string => showQuantity(Math.round(value * 1000), 'mm', units);
  const ways = box.partitions === 1 ? '1, which leaves' : `${box.partitions}, from alternate sides; each leaves`;
  return [
    ['Duct', `${mm(box.ductDiameter)} across`],
    ['Box, inside', `${mm(box.length)} × ${mm(box.width)} × ${mm(box.height)}`],
    ['Lining', `${mm(box.lining)} of mineral wool on the edges and partitions`],
    ['Partitions', `${ways} a gap of ${mm(box.gap)}`],
    ['Air', `${showFlow(flow, units)} at ${showSpeed(box.speed, units)}, takes ${box.loss.toFixed(0)} Pa`],
    ['Costs the wall', `${box.cost.toFixed(1)} dB${count > 1 ? `, its ${count} vents together` : ''}`],
    ['Lets most through', LIMITS[box.limit]],
  ];
};

/** What the search takes for granted, and what it does not look at. */
export const designLimits = ({ terms }: DesignFound, units: LengthUnits): string =>
  `One box in the room, a duct through a wall of ${showQuantity(terms.wallDepth * 1000, 'mm', units)} and a grille at either end; boards of ${showQuantity(terms.boards, 'kg/m2', units)}, such as two of 18 mm. The bass below 100 Hz is not counted, nor is the noise of a fan.`;
