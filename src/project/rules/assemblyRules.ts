import { fault, type Fault, type Path } from '../fault.ts';
import type { AssemblyEntry, CavityLayerEntry, LayerEntry, Project } from '../schema.ts';
import { RIGID_ADHESIVE } from '../schema.ts';
import { materialFault } from './materialRules.ts';

const isBoard = (layer: LayerEntry | undefined): boolean => layer?.kind === 'board';

/** A cavity lies between two leaves; its filling fits in it and is something to fill cavities with. */
const cavityFaults = (project: Project, layers: readonly LayerEntry[], at: number, path: Path): readonly Fault[] => {
  const cavity = layers[at] as CavityLayerEntry;
  const faults: Fault[] = [];
  const edge = at === 0 || at === layers.length - 1;
  if (edge || layers[at - 1]?.kind === 'cavity')
    faults.push(
      fault(
        [...path, 'kind'],
        cavity.kind,
        'a cavity between two leaves',
        edge
          ? 'Put a board on its open side, or take the cavity out.'
          : 'Make one cavity of the two, or put a board between them.',
      ),
    );
  const { fill } = cavity;
  if (!fill) return faults;
  const material = materialFault(project, fill.material, [...path, 'fill', 'material'], ['porous', 'board']);
  if (material) faults.push(material);
  if (fill.thickness_mm > cavity.depth_mm)
    faults.push(
      fault(
        [...path, 'fill', 'thickness_mm'],
        fill.thickness_mm,
        `at most the depth of the cavity, ${cavity.depth_mm} mm`,
        'Choose a thinner filling or a deeper cavity.',
      ),
    );
  return faults;
};

const layerFaults = (project: Project, layers: readonly LayerEntry[], at: number, path: Path): readonly Fault[] => {
  const layer = layers[at];
  if (!layer) return [];
  if (layer.kind === 'cavity') return cavityFaults(project, layers, at, path);
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
export const assemblyRules = (project: Project): readonly Fault[] =>
  Object.entries(project.assemblies).flatMap(([id, assembly]: [string, AssemblyEntry]) => {
    const path: Path = ['assemblies', id, 'layers'];
    if (!assembly.layers.some(isBoard))
      return [fault(path, assembly.layers, 'layers with at least one board among them', 'Add a board.')];
    return assembly.layers.flatMap((_, at) => layerFaults(project, assembly.layers, at, [...path, at]));
  });
