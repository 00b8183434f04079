import { boxFaults, ventBoxGeometry } from '../../engine/openings/index.ts';
import { AIR_DEFAULTS } from '../airSchema.ts';
import { fault, listText, type Fault, type Path } from '../fault.ts';
import { suggestion } from '../nearest.ts';
import type { Project } from '../schema.ts';
import { toVentBox } from '../toVentBox.ts';
import type { VentElementEntry, VentEntry } from '../ventSchema.ts';
import { materialFault } from './materialRules.ts';
import { assemblyFault } from './partRules.ts';

/** Openings for vents by id. */
const ventOpenings = (project: Project): readonly string[] =>
  project.surfaces.flatMap(({ openings }) =>
    (openings ?? []).filter(({ kind }) => kind === 'vent').map((opening) => opening.id),
  );

const curveFaults = (curve: Extract<VentElementEntry, { kind: 'fan' }>['curve'], path: Path): readonly Fault[] => {
  const backwards = curve.findIndex(({ flow_L_s }, i) => i > 0 && flow_L_s <= (curve[i - 1]?.flow_L_s ?? 0));
  if (backwards > 0)
    return [
      fault(
        [...path, 'curve', backwards, 'flow_L_s'],
        curve[backwards]?.flow_L_s,
        `more than the point before it, ${curve[backwards - 1]?.flow_L_s} L/s`,
        'Put the points in the order of their flow.',
      ),
    ];
  const rising = curve.findIndex(({ pressure_Pa }, i) => i > 0 && pressure_Pa > (curve[i - 1]?.pressure_Pa ?? 0));
  if (rising > 0)
    return [
      fault(
        [...path, 'curve', rising, 'pressure_Pa'],
        curve[rising]?.pressure_Pa,
        `at most that of the point before it, ${curve[rising - 1]?.pressure_Pa} Pa`,
        'A fan gives less pressure the more air it moves; leave a hump of the curve out.',
      ),
    ];
  return [];
};

/** What the wave solution would refuse, in the document's words. */
const boxGeometryFaults = (
  project: Project,
  element: Extract<VentElementEntry, { kind: 'box' }>,
  path: Path,
): readonly Fault[] => {
  const beyond = element.partitions.findIndex(({ at_m }, i) => {
    const before = element.partitions[i - 1]?.at_m ?? 0;
    return at_m >= element.length_m || at_m < before;
  });
  if (beyond >= 0)
    return [
      fault(
        [...path, 'partitions', beyond, 'at_m'],
        element.partitions[beyond]?.at_m,
        `ascending from 0 to ${element.length_m} m`,
        'Number the partitions from the left.',
      ),
    ];
  return boxFaults(ventBoxGeometry(toVentBox(project, element)))
    .slice(0, 3)
    .map((it) => fault([...path], `${it.path.join('.')}: ${String(it.value)}`, it.allowed, it.wayOut));
};

const elementFaults = (project: Project, element: VentElementEntry, path: Path): readonly Fault[] => {
  const faults: Fault[] = [];
  const say = (found: Fault | null): void => {
    if (found) faults.push(found);
  };
  if ('lining' in element && element.lining)
    say(materialFault(project, element.lining.material, [...path, 'lining', 'material'], ['porous']));
  if ('casing' in element && element.casing !== undefined)
    say(assemblyFault(project, element.casing, [...path, 'casing']));
  if (element.kind === 'fan') faults.push(...curveFaults(element.curve, path));
  return element.kind === 'box' && faults.length === 0 ? boxGeometryFaults(project, element, path) : faults;
};

const endFaults = (vent: VentEntry, path: Path): readonly Fault[] =>
  vent.elements.every(({ kind }) => kind === 'transition')
    ? [fault(path, vent.elements, 'a piece besides changes of size', 'Add the duct, grille or box that it leads to.')]
    : [];

/** An opening is made of vents of its own. */
const foreignFaults = (project: Project, id: string | undefined, opening: string, place: Path): readonly Fault[] => {
  const vent = id === undefined ? undefined : project.vents?.find((it) => it.id === id);
  if (!vent || vent.opening === opening) return [];
  const wayOut = `${vent.name} belongs to the opening ${vent.opening}; set its "opening" to ${opening}, or choose another vent.`;
  return [fault([...place, 'path'], id, 'a vent that belongs to this opening', wayOut)];
};

/** CO2 cannot be held below what comes in. */
const airFaults = ({ air }: Project): readonly Fault[] => {
  const outdoor = air?.outdoor_ppm ?? AIR_DEFAULTS.outdoor_ppm;
  const target = air?.target_ppm ?? AIR_DEFAULTS.target_ppm;
  return target > outdoor
    ? []
    : [fault(['air', 'target_ppm'], target, `more than outdoors, ${outdoor} ppm`, 'Choose 800 to 1500 ppm.')];
};

/** Vents: ids of their own, openings that are vents, materials, casings, fans and boxes that can be. */
export function* ventRules(project: Project): Generator<Fault> {
  yield* airFaults(project);
  const seen = new Set<string>();
  const openings = ventOpenings(project);
  for (const [i, vent] of (project.vents ?? []).entries()) {
    const path: Path = ['vents', i];
    if (seen.has(vent.id)) yield fault([...path, 'id'], vent.id, 'an id that no other vent has', 'Choose another id.');
    seen.add(vent.id);
    if (!openings.includes(vent.opening))
      yield fault(
        [...path, 'opening'],
        vent.opening,
        `the id of an opening of kind vent: ${listText(openings)}`,
        suggestion(vent.opening, openings),
      );
    yield* endFaults(vent, [...path, 'elements']);
    for (const [j, element] of vent.elements.entries())
      yield* elementFaults(project, element, [...path, 'elements', j]);
  }
  for (const [i, surface] of project.surfaces.entries())
    for (const [j, opening] of (surface.openings ?? []).entries()) {
      const place: Path = ['surfaces', i, 'openings', j];
      if ('path' in opening) yield* foreignFaults(project, opening.path, opening.id, place);
      for (const [k, candidate] of (opening.candidates ?? []).entries())
        yield* foreignFaults(project, candidate.path, opening.id, [...place, 'candidates', k]);
    }
}
