import { DUCT_LINING } from '../../engine/designGrid.ts';
import { DESIGN_TERMS, QUIET_SPEED } from '../../engine/designTerms.ts';
import { COARSE_DOUBT } from '../../engine/designVent.ts';
import { toVentTasks } from '../../project/toDesign.ts';
import { PIECE_NAMES } from '../../project/toVents.ts';
import { designVentOf, type FoundVent } from '../../project/ventDesign/designVents.ts';
import type { DesignAsk, DesignFound, DesignedVent } from './designAnswer.ts';

const widenedOf = ({ widened }: FoundVent): DesignedVent['widened'] =>
  widened.flatMap((end) =>
    'section' in end && end.section.shape === 'round'
      ? [{ name: end.name ?? PIECE_NAMES[end.kind], diameter: end.section.diameter_mm / 1000 }]
      : [],
  );

const toDesigned = (found: FoundVent): DesignedVent => {
  const { candidate, loss, speed, cost } = found.design;
  const { length, width, height, lining, partitions } = candidate.box;
  return {
    ductDiameter: candidate.diameter,
    boxes: candidate.boxes,
    length,
    width,
    height,
    lining: lining?.thickness ?? 0,
    partitions: partitions.length,
    gap: partitions[0]?.gap ?? 0,
    linedDuct: candidate.linedDuct,
    ductLining: DUCT_LINING,
    casing: found.casing,
    layers: found.layers,
    weight: found.weight,
    volume: candidate.volume,
    widened: widenedOf(found),
    loss,
    speed,
    cost,
    inPlace: {
      cost: found.inPlace.cost?.lostOverall ?? 0,
      rating: found.inPlace.sound.ratings.Rw,
      flow: found.inPlace.flow,
    },
    limits: found.limits,
    entry: found.entry,
  };
};

/**
 * The smallest vent for one opening. It takes seconds.
 * @param onsolved told how many boxes have been solved by now, and of how many
 * @throws Error where the opening is in no wall of the room
 */
export const designTask = (
  { project, opening, mostCost, bass }: DesignAsk,
  onsolved: (boxes: number, of: number) => void,
): DesignFound => {
  const task = toVentTasks(project).find((it) => it.opening === opening);
  if (!task) throw new Error('its opening is in no wall of the room; build the vent in first');
  const { answer, wallDepth, found } = designVentOf(project, task, { mostCost, bass }, onsolved);
  const one = answer.nearestOfOne;
  return {
    mostCost,
    bass,
    flow: task.flow,
    count: task.count,
    enough: answer.design !== null,
    floor: answer.floor,
    tried: answer.tried,
    terms: { wallDepth, mostSpeed: QUIET_SPEED, mostLoss: DESIGN_TERMS.mostLoss, doubt: COARSE_DOUBT },
    oneBox: one && {
      cost: one.cost,
      length: one.candidate.box.length,
      width: one.candidate.box.width,
      height: one.candidate.box.height,
      linedDuct: one.candidate.linedDuct,
    },
    hole: { width: task.width, height: task.height },
    vent: found && toDesigned(found),
  };
};
