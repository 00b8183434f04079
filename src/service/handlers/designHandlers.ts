import type { Handlers } from '../../contract/dispatcher.ts';
import type { Result } from '../../contract/methods.ts';
import { DESIGN_TERMS } from '../../engine/designTerms.ts';
import { designVent, type DesignAnswer } from '../../engine/designVent.ts';
import type { Evaluator } from '../../engine/evaluate.ts';
import { solveBoxCoarse, solveBoxWhole, waveBoxSound } from '../../engine/openings/index.ts';
import { toVentTasks, type VentTask } from '../../project/toDesign.ts';
import { toBuild } from '../../project/toEngine.ts';
import { checkedProject } from '../checkedProject.ts';

type Design = Result<'designVents'>['designs'][number];

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

const toDesign = (task: VentTask, { design, nearest }: DesignAnswer): Design => {
  const best = design ?? nearest;
  const { opening, name } = task;
  const box = best?.candidate.box;
  return {
    opening,
    name,
    flow_L_s: rounded(task.flow * 1000, 2),
    found: design !== null,
    box:
      best && box
        ? {
            duct_diameter_mm: rounded(best.candidate.diameter * 1000, 0),
            length_m: rounded(box.length, 3),
            width_m: rounded(box.width, 3),
            height_m: rounded(box.height, 3),
            partitions: box.partitions.length,
            gap_mm: rounded((box.partitions[0]?.gap ?? 0) * 1000, 0),
            lining_mm: rounded((box.lining?.thickness ?? 0) * 1000, 0),
          }
        : null,
    loss_Pa: rounded(best?.loss ?? 0, 1),
    speed_m_s: rounded(best?.speed ?? 0, 2),
    cost_dB: rounded(best?.cost ?? 0, 2),
    Dnew_dB: best?.sound.ratings.Rw ?? null,
  };
};

/** The smallest box for each vent opening; openings that are asked the same are worked out once. */
export const designHandlers = (evaluator: Evaluator): Pick<Handlers, 'designVents'> => ({
  designVents: ({ document, most_cost_dB: mostCost }) => {
    const project = checkedProject(document);
    const { parts } = evaluator.shell(toBuild(project), 'draft');
    const known = new Map<string, DesignAnswer>();
    const designs = toVentTasks(project).flatMap((task): Design[] => {
      const wall = parts.find(({ id }) => id === task.surface);
      if (!wall) return [];
      const key = `${task.surface} ${task.flow} ${task.count}`;
      const answer =
        known.get(key) ??
        designVent(
          {
            direction: task.direction,
            flow: task.flow,
            count: task.count,
            wallR: wall.R,
            wallArea: wall.area,
            ...DESIGN_TERMS,
            mostCost,
          },
          { boxSound: (box) => waveBoxSound(box, solveBoxWhole), reduction: () => [] },
          (box) => waveBoxSound(box, solveBoxCoarse),
        );
      known.set(key, answer);
      return [toDesign(task, answer)];
    });
    return { most_cost_dB: mostCost, designs };
  },
});
