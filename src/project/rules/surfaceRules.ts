import { fault, type Fault, type Path } from '../fault.ts';
import { isPanel, netArea, outlineArea } from '../parts.ts';
import type { OpeningEntry, Project, SurfaceEntry } from '../schema.ts';
import { partFaults } from './partRules.ts';

/** A millimetre, m: sizes that differ by less are the same size. */
const SLACK = 0.001;
/** The least of a surface that must be left beside its openings, m². */
const LEAST = 0.001;

const round = (area: number): string => String(Math.round(area * 100) / 100);

/** A door, window, vent or service lies within its surface. */
const openingFaults = (surface: SurfaceEntry, opening: OpeningEntry, path: Path): readonly Fault[] => {
  if (!isPanel(opening)) return [];
  const size = (key: 'width_m' | 'height_m', from: 'x_m' | 'y_m'): readonly Fault[] => {
    const least = opening[from] ?? 0;
    if (least + opening[key] <= surface[key] + SLACK) return [];
    const placed = opening[from] === undefined || opening[key] > surface[key];
    return placed
      ? [
          fault(
            [...path, key],
            opening[key],
            `at most that of ${surface.name}, ${surface[key]} m`,
            `Make ${opening.name} smaller, or ${surface.name} larger.`,
          ),
        ]
      : [
          fault(
            [...path, from],
            opening[from],
            `at most ${round(surface[key] - opening[key])} m, so that ${opening.name} lies within ${surface.name}`,
            'Move it inwards, or leave its place out.',
          ),
        ];
  };
  return [...size('width_m', 'x_m'), ...size('height_m', 'y_m')];
};

/** Something of the surface is left beside its openings. */
const coveredFaults = (surface: SurfaceEntry, path: Path): readonly Fault[] => {
  if (netArea(surface) >= LEAST) return [];
  const { openings = [], name } = surface;
  const taken = round(openings.reduce((sum, opening) => sum + outlineArea(opening), 0));
  return [
    fault(
      [...path, 'openings'],
      openings,
      `openings that leave some of ${name}, which has ${round(outlineArea(surface))} m²`,
      `They take ${taken} m² of it. Make them smaller; if the whole surface is glass or a gate, give the surface itself that make-up.`,
    ),
  ];
};

/** An id is used once in the whole project. */
const repeatedFaults = (seen: Set<string>, id: string, path: Path): readonly Fault[] => {
  if (!seen.has(id)) {
    seen.add(id);
    return [];
  }
  const wayOut = `Another part is called ${id} already; choose another id, such as ${id}-2.`;
  return [fault([...path, 'id'], id, 'an id that no other surface or opening has', wayOut)];
};

/** Every surface with its openings. */
export function* surfaceRules(project: Project): Generator<Fault> {
  const seen = new Set<string>();
  for (const [i, surface] of project.surfaces.entries()) {
    const path: Path = ['surfaces', i];
    yield* repeatedFaults(seen, surface.id, path);
    yield* partFaults(project, surface, path);
    for (const [j, opening] of (surface.openings ?? []).entries()) {
      const place = [...path, 'openings', j];
      yield* repeatedFaults(seen, opening.id, place);
      yield* partFaults(project, opening, place);
      yield* openingFaults(surface, opening, place);
    }
    yield* coveredFaults(surface, path);
  }
}
