import type { VentReport } from '../../engine/breatheResult.ts';
import { designGrid } from '../../engine/designGrid.ts';
import { designLimits, type DesignLimits } from '../../engine/designLimits.ts';
import { designVent, type DesignAnswer, type DesignWish, type VentDesign } from '../../engine/designVent.ts';
import { createEvaluator } from '../../engine/evaluate.ts';
import { casingArea, solveBoxWhole, ventBoxGeometry, waveBoxSound } from '../../engine/openings/index.ts';
import type { BoxResult, VentBox } from '../../engine/openings/index.ts';
import { createMemory } from '../../engine/quantities/index.ts';
import { putVentDesign, type VentDesignEntry } from '../commands/designCommands.ts';
import { freshId } from '../freshId.ts';
import { findMaterial } from '../library.ts';
import { surfaceOfOpening } from '../parts.ts';
import type { Project, VentElementEntry, VentEntry } from '../schema.ts';
import { toBreathe } from '../toBreathe.ts';
import type { VentTask } from '../toDesign.ts';
import { toBuild } from '../toEngine.ts';
import { toVentPath } from '../toVents.ts';
import { boxCasings, casingLayers, newAmong, toDesignCasings, type CasingLayer } from './casings.ts';
import { DESIGN_LINING, designedElements } from './elements.ts';
import { designFrame, isEnd } from './frame.ts';

/** The best that was found for one opening. */
export interface FoundVent {
  readonly design: VentDesign;
  readonly limits: DesignLimits;
  /** in the document's own form */
  readonly entry: VentDesignEntry;
  /** ends that were too narrow for its duct, as they become */
  readonly widened: readonly VentElementEntry[];
  /** of what its boxes are built, and what each of them weighs without its lining, kg */
  readonly casing: string;
  readonly layers: readonly CasingLayer[];
  readonly weight: number;
  /** what the station says of it once it is put in, its fans running */
  readonly inPlace: VentReport;
}

export interface VentDesignFound {
  readonly wish: DesignWish;
  readonly answer: DesignAnswer;
  readonly wallDepth: number;
  /** null where nothing carries the air */
  readonly found: FoundVent | null;
}

/** What is asked besides the opening's own task. */
export interface DesignAsks {
  /** dB, > 0 */
  readonly mostCost: number;
  /** also from 50 Hz, for music rich in bass */
  readonly bass: boolean;
}

/** Fine solutions kept: more than a search needs. */
const KEPT = 200;

const liningResistivity = (project: Project): number => {
  const lining = findMaterial(project, DESIGN_LINING);
  if (lining?.kind !== 'porous') throw new Error(`material ${DESIGN_LINING} must be porous`);
  return lining.flow_resistivity_Pa_s_m2;
};

/** The vent of a task, or a new one without pieces. */
const ventOfTask = (project: Project, { vent, opening, name, direction }: VentTask): VentEntry => {
  const known = project.vents?.find(({ id }) => id === vent);
  const ids = (project.vents ?? []).map(({ id }) => id);
  return known ?? { id: freshId(name, ids), name, opening, direction, elements: [] };
};

/**
 * Designs the vent of one opening: boxes and ducts anew, its ends and fans as they are. It takes seconds.
 * @param project checked
 * @param task air and direction of the opening
 * @param asks what it may cost its wall
 * @param onsolved told how many boxes have been solved by now, and of how many
 * @throws Error where the opening is in no wall
 */
export const designVentOf = (
  project: Project,
  task: VentTask,
  { mostCost, bass }: DesignAsks,
  onsolved: (boxes: number, of: number) => void = () => undefined,
): VentDesignFound => {
  const solved = createMemory<BoxResult>(KEPT);
  const keyOf = (box: VentBox): string => JSON.stringify(box);
  const evaluator = createEvaluator((box) => solved.find(keyOf(box)) ?? null);
  const build = toBuild(project);
  const alone = { ...build, options: [], parts: build.parts.filter(({ id }) => id === task.surface) };
  const wall = evaluator.shell(alone, 'full').parts.find(({ id }) => id === task.surface);
  const surface = surfaceOfOpening(project, task.opening);
  if (!wall || !surface) throw new Error('its opening is in no wall of the room; build the vent in first');

  const vent = ventOfTask(project, task);
  const frame = designFrame(project, surface, vent.elements.length > 0 ? vent : null);
  const casings = boxCasings(project);
  const furnished: Project = { ...project, assemblies: { ...project.assemblies, ...casings } };
  const wish = {
    flow: task.flow,
    count: task.count,
    wallR: wall.R,
    wallArea: wall.area,
    mostCost,
    bass,
  };
  const answer = designVent(
    wish,
    {
      candidates: designGrid(liningResistivity(project), toDesignCasings(project, casings)),
      pathOf: (candidate) => toVentPath(furnished, { ...vent, elements: [...designedElements(candidate, frame)] }),
    },
    {
      boxSound: (box) => waveBoxSound(box, () => solved.recall(keyOf(box), () => solveBoxWhole(ventBoxGeometry(box)))),
      reduction: evaluator.reductionAt('full'),
    },
    onsolved,
  );
  const best = answer.design ?? answer.nearest;
  if (!best) return { wish, answer, wallDepth: frame.wallDepth, found: null };
  const { casing } = best.candidate;
  const used = Object.fromEntries(Object.entries(casings).filter(([id]) => id === casing.key));
  const elements = [...designedElements(best.candidate, frame)];
  const entry: VentDesignEntry = { vent: { ...vent, elements }, assemblies: newAmong(project, used) };
  const next = putVentDesign.apply(project, entry);
  const inPlace = evaluator
    .breathe(toBuild(next), toBreathe(next), 'full')
    .vents.find(({ id }) => id === entry.vent.id);
  if (!inPlace) throw new Error('the designed vent must be in its opening once it is put in');
  return {
    wish,
    answer,
    wallDepth: frame.wallDepth,
    found: {
      design: best,
      limits: designLimits(best, wish),
      entry,
      widened: elements.filter((it) => isEnd(it) && ![...frame.inner, ...frame.outer].includes(it)),
      casing: casings[casing.key]?.name ?? '',
      layers: Object.values(used).flatMap((made) => casingLayers(project, made)),
      weight: casingArea(best.candidate.box) * casing.wall.surfaceMass,
      inPlace,
    },
  };
};
