import { toAirPlan } from './toBreathe.ts';
import type { Project } from './schema.ts';

/** What each vent opening of a project is asked to do. */
export interface VentTask {
  readonly opening: string;
  readonly name: string;
  readonly surface: string;
  /** the vent that it is made of; null where there is none yet */
  readonly vent: string | null;
  readonly direction: 'supply' | 'extract';
  /** m³/s */
  readonly flow: number;
  /** of the opening, m */
  readonly width: number;
  readonly height: number;
  /** vent openings in the same surface */
  readonly count: number;
}

/** Least air of one person at music where nobody is named, m³/s. @source ANSI/ASHRAE 62.1-2016, music */
const ONE_PERSON = 0.008;

/** Every vent opening with its share of the air that the people need: half of the openings bring it, half take it. */
export const toVentTasks = (project: Project): readonly VentTask[] => {
  const openings = project.surfaces.flatMap((surface) =>
    (surface.openings ?? []).flatMap((opening) => (opening.kind === 'vent' ? [{ surface, opening }] : [])),
  );
  const directionOf = (id: string, at: number): VentTask['direction'] =>
    project.vents?.find(({ opening }) => opening === id)?.direction ?? (at % 2 === 0 ? 'supply' : 'extract');
  const plan = toAirPlan(project);
  const people = plan?.people.reduce((sum, { count }) => sum + count, 0) ?? 0;
  const needed = Math.max(1, people) * (plan?.perPerson ?? ONE_PERSON);
  const directions = openings.map(({ opening }, at) => directionOf(opening.id, at));
  return openings.map(({ surface, opening }, at) => {
    const direction = directions[at] ?? 'supply';
    const alike = directions.filter((other) => other === direction).length;
    return {
      opening: opening.id,
      name: opening.name,
      surface: surface.id,
      vent: ('path' in opening ? opening.path : undefined) ?? null,
      direction,
      flow: needed / alike,
      width: opening.width_m,
      height: opening.height_m,
      count: openings.filter((other) => other.surface === surface).length,
    };
  });
};
