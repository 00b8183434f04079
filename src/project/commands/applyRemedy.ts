import type { Remedy, RemedyLayer } from '../../engine/quantities/index.ts';
import { freshId } from '../freshId.ts';
import type { AssemblyEntry, CavityLayerEntry, LayerEntry } from '../schema.ts';
import { assemblyOf } from './change.ts';
import { command, refuse } from './command.ts';
import { patched } from './patch.ts';

/** The absorber put into an empty cavity when the assembly has none to take after. */
export const USUAL_FILL = 'mineral-wool-45';

/** Millimetres to a hundredth, so that 0.1 m does not become 100.00000000000001 mm. */
const toMillimetres = (metres: number): number => Math.round(metres * 1e5) / 100;

const layerAt = (assembly: AssemblyEntry, index: number): LayerEntry =>
  assembly.layers[index] ?? refuse(`${assembly.name} has changed meanwhile; there is no layer ${index + 1} in it now.`);

const cavityAt = (assembly: AssemblyEntry, index: number): CavityLayerEntry => {
  const layer = layerAt(assembly, index);
  return layer.kind === 'cavity'
    ? layer
    : refuse(`${assembly.name} has changed meanwhile; layer ${index + 1} is no longer a cavity.`);
};

const deepened = (cavity: CavityLayerEntry, depth: number): CavityLayerEntry => {
  const depth_mm = toMillimetres(depth);
  const fill = cavity.fill && patched(cavity.fill, { thickness_mm: Math.min(cavity.fill.thickness_mm, depth_mm) });
  return patched(cavity, { depth_mm, fill });
};

const kept = (assembly: AssemblyEntry, { keep, depth, arrangement }: RemedyLayer): LayerEntry => {
  const layer = depth === undefined ? layerAt(assembly, keep) : deepened(cavityAt(assembly, keep), depth);
  return arrangement && layer.kind === 'cavity' && layer.frame
    ? patched(layer, { frame: patched(layer.frame, { arrangement }) })
    : layer;
};

const remedied = (assembly: AssemblyEntry, remedy: Remedy): LayerEntry[] => {
  if (remedy.kind === 'reorder') return remedy.layers.map((one) => kept(assembly, one));
  if (remedy.kind === 'thicken') {
    const layer = layerAt(assembly, remedy.layer);
    if (layer.kind === 'cavity') return refuse(`${assembly.name} has changed meanwhile; try the remedy again.`);
    const thicker = { ...layer, thickness_mm: toMillimetres(remedy.thickness) };
    return assembly.layers.with(remedy.layer, thicker);
  }
  const cavity = cavityAt(assembly, remedy.cavity);
  if (remedy.kind === 'deepen') return assembly.layers.with(remedy.cavity, deepened(cavity, remedy.depth));
  const wool = assembly.layers.flatMap((layer) =>
    layer.kind === 'cavity' && layer !== cavity && layer.fill ? [layer.fill.material] : [],
  );
  const fill = { material: wool[0] ?? USUAL_FILL, thickness_mm: Math.max(1, cavity.depth_mm) };
  return assembly.layers.with(remedy.cavity, { ...cavity, fill });
};

/** The assembly without the fault that a note raised, as a new one beside it; the old one stays. */
export const applyRemedy = command<{ assembly: string; remedy: Remedy; id?: string }>(
  ({ remedy }) => remedy.label,
  (project, { assembly, remedy, id }) => {
    const before = assemblyOf(project, assembly);
    const name = `${before.name}: ${remedy.label}`.slice(0, 200);
    const key = id ?? freshId(name, Object.keys(project.assemblies));
    // The user's prices were for the old layers.
    const priced = { price_per_m2: undefined, labour_per_m2: undefined };
    const rebuilt = patched(before, { name, layers: remedied(before, remedy), ...priced });
    const beside = [...new Set([assembly, ...(project.compare ?? [])])].slice(0, 3);
    return patched(project, {
      assemblies: { ...project.assemblies, [key]: rebuilt },
      compare: [...beside, key],
    });
  },
);
