import type { VentWayKind } from '../../../src/engine/openings/index.ts';
import type { DesignFound, DesignedVent } from '../../../src/worker/breathe/designAnswer.ts';
import type { DesignWork } from '../../store/designSearch.svelte.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { showFlow, showSpeed } from '../../text/showFlow.ts';
import { showQuantity } from '../../text/showNumber.ts';

/** How far a search is. */
export const progressWords = ({ boxes, of }: DesignWork): string =>
  of === null || boxes === 0 ? 'Looking …' : `Looking: ${boxes} boxes of at most ${of} solved …`;

/** What would bring the nearest further, by the way that lets most through. */
const HELPS: Readonly<Record<VentWayKind, string>> = {
  air: 'More vents for the same air have narrower ducts, which hold more back',
  casing: 'Heavier boards than these help, or boxes that stand where nobody plays',
  'duct-wall': 'Heavier boards round the lined duct help',
  joints: 'Less air through this wall makes the holes smaller, or the vent goes through a wall that keeps in less',
};

/** What came of the search, in a sentence or two. */
export const designWords = (found: DesignFound, units: LengthUnits): string => {
  const { enough, vent, flow, mostCost, terms, floor } = found;
  if (!vent)
    return `No duct that was tried carries ${showFlow(flow, units)} quietly (${showSpeed(terms.mostSpeed, units)} and ${terms.mostLoss} Pa at most). Share the air among more vents, or take a wider fan.`;
  const cost = `${vent.cost.toFixed(1)} dB`;
  if (enough)
    return `${vent.boxes === 2 ? 'These cost' : 'This one costs'} the wall ${cost}, not more than the ${mostCost} dB asked for.`;
  const limit = vent.limits.ways[0]?.kind ?? 'air';
  const least =
    floor !== null && floor > mostCost
      ? ` Joints and edges alone cost ${floor.toFixed(1)} dB, however good the boxes are.`
      : '';
  return `Nothing that was tried is enough: the nearest costs the wall ${cost}, not ${mostCost} dB.${least} ${HELPS[floor !== null && floor > mostCost ? 'joints' : limit]}.`;
};

/** On what the answer stands. */
export const proofWords = ({ enough, tried, terms, vent }: DesignFound): string => {
  if (!vent) return '';
  const rest =
    tried.whole < tried.coarse
      ? `, ${tried.whole} in all bands and the rest up to 400 Hz, where they already let too much through`
      : '';
  const solved = `${tried.coarse} of the ${tried.boxes} boxes for the two narrowest ducts that carry the air (${tried.airy} ways to build them) were solved by the wave equation at 20 mm${rest}; ${tried.fine} on the fine grid`;
  const left = enough ? ' The others take more room.' : ' The others let too much through beside any box.';
  const others = tried.coarse < tried.boxes ? left : '';
  return enough
    ? `Nothing smaller in the list does it: ${solved}.${others} Whatever leaks within ${terms.doubt} dB of enough was solved finely.`
    : `Nothing in the list does it: ${solved}.${others} The coarse grid is trusted to ${terms.doubt} dB.`;
};

/** What two people lift, kg. @source common practice: 25 kg each */
const LIFTED = 50;

/** What the search takes for granted, and what it does not look at. */
export const designLimits = ({ terms, bass, vent }: DesignFound, units: LengthUnits): string =>
  `Fans off, a wall of ${showQuantity(terms.wallDepth * 1000, 'mm', units)}. ${bass ? 'Counted from 50 Hz on, for music rich in bass' : 'Below 100 Hz nothing is counted'}; the noise of a fan is not in it.${vent?.boxes === 2 ? ' The second box stands outside and must shed the rain.' : ''}${
    vent && vent.weight > LIFTED
      ? ' So heavy a box is built in place, on something that carries it: ask whoever answers for the structure.'
      : ''
  }`;

/** What the button does. */
export const putWords = ({ enough }: DesignFound, { boxes }: DesignedVent): string =>
  enough ? `Put ${boxes === 2 ? 'these boxes' : 'this box'} into the vent` : 'Put the nearest into the vent';
