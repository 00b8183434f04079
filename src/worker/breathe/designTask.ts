import { overallReduction } from '../../engine/breathe.ts';
import { DESIGN_TERMS, QUIET_SPEED } from '../../engine/designTerms.ts';
import { designVent, type DesignWish, type VentDesign } from '../../engine/designVent.ts';
import { createEvaluator } from '../../engine/evaluate.ts';
import {
  differenceOfArea,
  solveBoxCoarse,
  solveBoxWhole,
  waveBoxSound,
  withVents,
  type VentWayKind,
} from '../../engine/openings/index.ts';
import { toVentTasks } from '../../project/toDesign.ts';
import { toBuild } from '../../project/toEngine.ts';
import type { DesignAsk, DesignFound, DesignedBox } from './designAnswer.ts';

const { casing, wallDepth, mostLoss } = DESIGN_TERMS;
const TERMS = { boards: casing.surfaceMass, wallDepth, mostSpeed: QUIET_SPEED, mostLoss };
const KINDS: readonly VentWayKind[] = ['air', 'casing', 'duct-wall', 'joints'];
/** Less open area than this is none, m². */
const LEAST_AREA = 1e-13;

/** The kind of way that, alone, takes most from the wall. */
const limitOf = ({ sound }: VentDesign, wish: DesignWish): VentWayKind => {
  const left = KINDS.map((kind) => {
    const ways = sound.ways.filter((way) => way.kind === kind);
    const whole = wish.wallR.map((R, b) => {
      const area = ways.reduce((sum, { openArea }) => sum + (openArea[b] ?? 0), 0);
      return withVents(R, wish.wallArea, [differenceOfArea(Math.max(LEAST_AREA, area))]);
    });
    return { kind, R: overallReduction(whole) };
  });
  return left.reduce((least, it) => (it.R < least.R ? it : least)).kind;
};

const boxOf = (design: VentDesign, wish: DesignWish): DesignedBox => {
  const { length, width, height, lining, partitions } = design.candidate.box;
  return {
    ductDiameter: design.candidate.diameter,
    length,
    width,
    height,
    lining: lining?.thickness ?? 0,
    partitions: partitions.length,
    gap: partitions[0]?.gap ?? 0,
    loss: design.loss,
    speed: design.speed,
    cost: design.cost,
    limit: limitOf(design, wish),
  };
};

/**
 * The smallest lined box for one opening. It takes seconds.
 * @param onsolved told how many boxes have been solved by now
 * @throws Error where the opening is in no wall of the room
 */
export const designTask = ({ project, opening, mostCost }: DesignAsk, onsolved: (n: number) => void): DesignFound => {
  const task = toVentTasks(project).find((it) => it.opening === opening);
  const wall = createEvaluator()
    .shell(toBuild(project), 'draft')
    .parts.find(({ id }) => id === task?.surface);
  if (!task || !wall) throw new Error('its opening is in no wall of the room; build the vent in first');
  const { direction, flow, count } = task;
  const wish: DesignWish = { ...DESIGN_TERMS, direction, flow, count, wallR: wall.R, wallArea: wall.area, mostCost };
  const { design, nearest } = designVent(
    wish,
    { boxSound: (box) => waveBoxSound(box, solveBoxWhole), reduction: () => [] },
    (box) => waveBoxSound(box, solveBoxCoarse),
    onsolved,
  );
  const best = design ?? nearest;
  return { mostCost, flow, count, enough: design !== null, terms: TERMS, box: best && boxOf(best, wish) };
};
