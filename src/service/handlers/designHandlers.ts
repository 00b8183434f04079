import type { Handlers } from '../../contract/dispatcher.ts';
import type { Result } from '../../contract/methods.ts';
import { toVentTasks, type VentTask } from '../../project/toDesign.ts';
import { designVentOf, type VentDesignFound } from '../../project/ventDesign/designVents.ts';
import { checkedProject } from '../checkedProject.ts';

type Design = Result<'designVents'>['designs'][number];

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

const toBox = (found: VentDesignFound['found']): Design['box'] => {
  if (!found) return null;
  const { box, diameter } = found.design.candidate;
  return {
    duct_diameter_mm: rounded(diameter * 1000, 0),
    length_m: rounded(box.length, 3),
    width_m: rounded(box.width, 3),
    height_m: rounded(box.height, 3),
    partitions: box.partitions.length,
    gap_mm: rounded((box.partitions[0]?.gap ?? 0) * 1000, 0),
    lining_mm: rounded((box.lining?.thickness ?? 0) * 1000, 0),
  };
};

const toDesign = ({ opening, name, flow }: VentTask, { answer, found }: VentDesignFound): Design => {
  const design = found?.design;
  const place = found?.inPlace;
  const bass = found?.limits.bass;
  return {
    opening,
    name,
    flow_L_s: rounded(flow * 1000, 2),
    found: answer.design !== null,
    box: toBox(found),
    boxes: design?.candidate.boxes ?? 0,
    lined_duct_m: design?.candidate.linedDuct ?? 0,
    casing: found?.casing ?? null,
    volume_m3: rounded(design?.candidate.volume ?? 0, 3),
    weight_kg: rounded(found?.weight ?? 0, 0),
    cost_of_one_box_dB: answer.nearestOfOne && rounded(answer.nearestOfOne.cost, 2),
    loss_Pa: rounded(design?.loss ?? 0, 1),
    speed_m_s: rounded(design?.speed ?? 0, 2),
    cost_dB: rounded(design?.cost ?? 0, 2),
    cost_in_place_dB: place?.cost ? rounded(place.cost.lostOverall, 2) : null,
    Dnew_dB: place?.sound.ratings.Rw ?? null,
    limits: (found?.limits.ways ?? []).map(({ kind, cost }) => ({ way: kind, cost_dB: rounded(cost, 2) })),
    bands_Hz: [...(found?.limits.bands ?? [])],
    worst_bass: bass ? { band_Hz: bass.band, insertion_loss_dB: rounded(bass.loss, 1) } : null,
    floor_dB: answer.floor === null ? null : rounded(answer.floor, 2),
    tried: answer.tried,
    vent: found?.entry.vent ?? null,
    assemblies: found?.entry.assemblies ?? {},
  };
};

/** The smallest vent for each opening of kind vent. */
export const designHandlers: Pick<Handlers, 'designVents'> = {
  designVents: ({ document, most_cost_dB: mostCost, bass }) => {
    const project = checkedProject(document);
    const designs = toVentTasks(project).map((task) => toDesign(task, designVentOf(project, task, { mostCost, bass })));
    return { most_cost_dB: mostCost, bass, designs };
  },
};
