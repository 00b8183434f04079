import { fault, listText, type Fault, type Path } from '../fault.ts';
import { suggestion } from '../nearest.ts';
import type { OpeningEntry, Project } from '../schema.ts';

type Panel = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;
type Key = 'seals' | 'keyhole' | 'letter_plate' | 'second' | 'items';

/** Which openings have which fittings. */
const PLACES: Readonly<Record<Key, readonly Panel['kind'][]>> = {
  seals: ['door', 'window'],
  keyhole: ['door'],
  letter_plate: ['door'],
  second: ['door', 'window'],
  items: ['service'],
};

const KEYS: readonly Key[] = ['seals', 'keyhole', 'letter_plate', 'second', 'items'];

/** Fittings stand where they can, on a leaf that is predicted: a measured curve has its joints in it. */
export const fittingFaults = (
  project: Project,
  panel: Pick<Panel, Key | 'kind' | 'name' | 'assembly'>,
  path: Path,
): readonly Fault[] => {
  const given = KEYS.filter((key) => panel[key] !== undefined);
  const stray = given.find((key) => !PLACES[key].includes(panel.kind));
  if (stray !== undefined)
    return [
      fault(
        [...path, stray],
        panel[stray],
        `${stray} on a ${PLACES[stray].join(' or ')}`,
        `${panel.name} is a ${panel.kind}; take "${stray}" out.`,
      ),
    ];
  const [first] = given;
  if (first !== undefined && panel.assembly === undefined)
    return [
      fault(
        [...path, first],
        panel[first],
        'a leaf made of an assembly',
        'A measured curve holds its joints already; take this out, or name an assembly.',
      ),
    ];
  const faults: Fault[] = [];
  const { second, items } = panel;
  const ids = Object.keys(project.assemblies);
  if (second && !ids.includes(second.assembly))
    faults.push(
      fault(
        [...path, 'second', 'assembly'],
        second.assembly,
        `an id under "assemblies": ${listText(ids)}`,
        suggestion(second.assembly, ids),
      ),
    );
  for (const [i, { hole_mm: hole, through_mm: through }] of (items ?? []).entries())
    if (hole !== undefined && through !== undefined && through > hole)
      faults.push(
        fault(
          [...path, 'items', i, 'through_mm'],
          through,
          `at most the hole, ${hole} mm`,
          'Give the outer size of the cable or pipe, and the size of its hole.',
        ),
      );
  return faults;
};
