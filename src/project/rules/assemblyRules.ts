import { fault, type Fault, type Path } from '../fault.ts';
import type { CavityLayerEntry, LayerEntry, Project } from '../schema.ts';
import { RIGID_ADHESIVE } from '../schema.ts';
import { materialFault } from './materialRules.ts';

const isBoard = (layer: LayerEntry | undefined): boolean => layer?.kind === 'board';

/** The filling of a cavity fits in it and is something to fill cavities with. */
const cavityFaults = (project: Project, cavity: CavityLayerEntry, path: Path): readonly Fault[] => {
  const { fill, depth_mm: depth } = cavity;
  if (!fill) return [];
  const wrong = materialFault(project, fill.material, [...path, 'fill', 'material'], ['porous', 'board']);
  const place = [...path, 'fill', 'thickness_mm'];
  const wayOut = 'Choose a thinner filling or a deeper cavity.';
  return [
    ...(wrong ? [wrong] : []),
    ...(fill.thickness_mm > depth
      ? [fault(place, fill.thickness_mm, `at most the depth of the cavity, ${depth} mm`, wayOut)]
      : []),
  ];
};

const layerFaults = (project: Project, layers: readonly LayerEntry[], at: number, path: Path): readonly Fault[] => {
  const layer = layers[at];
  if (!layer) return [];
  if (layer.kind === 'cavity') return cavityFaults(project, layer, path);
  const place: Path = [...path, 'material'];
  if (layer.kind === 'board') {
    const wrong = materialFault(project, layer.material, place, ['board']);
    return wrong ? [wrong] : [];
  }
  const faults: Fault[] = [];
  if (!isBoard(layers[at - 1]) || !isBoard(layers[at + 1]))
    faults.push(
      fault(
        [...path, 'kind'],
        layer.kind,
        'an interlayer with a board directly on each side',
        'Move it between two boards, or take it out.',
      ),
    );
  const wrong =
    layer.material === RIGID_ADHESIVE ? null : materialFault(project, layer.material, place, ['viscoelastic']);
  if (wrong) faults.push(wrong);
  return faults;
};

/** What the layers of an assembly must be to each other. */
export function* assemblyRules(project: Project): Generator<Fault> {
  for (const [id, { layers }] of Object.entries(project.assemblies)) {
    const path: Path = ['assemblies', id, 'layers'];
    if (layers.some(isBoard)) for (const at of layers.keys()) yield* layerFaults(project, layers, at, [...path, at]);
    else yield fault(path, layers, 'layers with at least one board among them', 'Add a board.');
  }
}
