import { CARBON_DIOXIDE_LEVELS, moistureOf, pathFanPressure, pathLoss } from '../../engine/airflow/index.ts';
import type { BreatheResult, VentReport } from '../../engine/breatheResult.ts';
import type { Evaluator } from '../../engine/evaluate.ts';
import { differenceOfArea, estimatedBoxSound, ventTransmission, withVents } from '../../engine/openings/index.ts';
import type { VentPath, VentWayKind } from '../../engine/openings/index.ts';
import type { Resolution } from '../../engine/transmission/index.ts';
import type { Project } from '../../project/schema.ts';
import { toBreathe } from '../../project/toBreathe.ts';
import { toBuild } from '../../project/toEngine.ts';
import type { BreatheAnswer, FanDrawing, VentDrawn, WallDrawn } from './breatheAnswer.ts';

const POINTS = 48;
const HOUR = 3600;
/** Less open area than this is told as this: more than 140 dB is nobody's figure, m². */
const LEAST_AREA = 1e-13;

/** From no flow to a little beyond the fan's free flow. */
const fanDrawing = (path: VentPath): FanDrawing | null => {
  const fans = path.elements.flatMap((element) => (element.kind === 'fan' ? [element.curve] : []));
  if (fans.length === 0) return null;
  const most = 1.05 * Math.max(...fans.flatMap(({ flows }) => flows));
  const flows = Array.from({ length: POINTS + 1 }, (_, i) => (i * most) / POINTS);
  return {
    flows,
    fan: flows.map((flow) => pathFanPressure(path, flow)),
    loss: flows.map((flow) => pathLoss(path, flow)),
  };
};

const waysOf = ({ sound }: VentReport, kinds: readonly VentWayKind[]): readonly number[] | null => {
  const ways = sound.ways.filter(({ kind }) => kinds.includes(kind));
  if (ways.length === 0) return null;
  return sound.bands.map((_, b) =>
    differenceOfArea(
      Math.max(
        LEAST_AREA,
        ways.reduce((sum, way) => sum + (way.openArea[b] ?? 0), 0),
      ),
    ),
  );
};

const handbookOf = (evaluator: Evaluator, path: VentPath, resolution: Resolution): readonly number[] | null => {
  if (!path.elements.some(({ kind }) => kind === 'box')) return null;
  const reduction = evaluator.reductionAt(resolution);
  return ventTransmission(path, { boxSound: estimatedBoxSound, reduction }).normalisedDifference;
};

const wallsOf = ({ vents }: BreatheResult): readonly WallDrawn[] => {
  const costs = vents.flatMap(({ cost }) => (cost ? [cost] : []));
  return [...new Map(costs.map((cost) => [cost.surface, cost])).values()].map(({ surface, wallR, wallArea }) => {
    const inWall = vents.filter(({ cost }) => cost?.surface === surface);
    return {
      surface,
      withAll: wallR.map((R, b) =>
        withVents(
          R,
          wallArea,
          inWall.map(({ sound }) => sound.normalisedDifference[b] ?? 0),
        ),
      ),
    };
  });
};

/** The vents and the air of a project with the curves that are drawn of them. */
export const breatheOf = (evaluator: Evaluator, project: Project, resolution: Resolution): BreatheAnswer => {
  const question = toBreathe(project);
  const result = evaluator.breathe(toBuild(project), question, resolution);
  const drawn = result.vents.map((vent): VentDrawn => {
    const path = question.vents.find((it) => it.path.id === vent.id)?.path;
    const { cost } = vent;
    return {
      id: vent.id,
      fan: path ? fanDrawing(path) : null,
      along: waysOf(vent, ['air']) ?? [],
      walls: waysOf(vent, ['casing', 'duct-wall']),
      joints: waysOf(vent, ['joints']),
      handbook: path && resolution === 'full' ? handbookOf(evaluator, path, resolution) : null,
      wallWith: cost?.wallR.map((R, b) => R - (cost.lost[b] ?? 0)) ?? null,
    };
  });
  const { aim, poor, workLimit } = CARBON_DIOXIDE_LEVELS;
  return {
    result,
    plan: question.air,
    drawn,
    walls: wallsOf(result),
    marks: { aim, poor, workLimit },
    water: moistureOf(result.air?.heat.latent ?? 0) * HOUR,
  };
};
