import { surfaceMass, totalThickness } from '../../engine/assembly/index.ts';
import type { DesignCasing } from '../../engine/designGrid.ts';
import { equal } from '../commands/patch.ts';
import { freshId } from '../freshId.ts';
import { findMaterial } from '../library.ts';
import type { AssemblyEntry, LayerEntry, Project } from '../schema.ts';
import { toAssembly } from '../toAssembly.ts';

/** Make-ups by id, to be added to a document. */
export type NewAssemblies = Readonly<Record<string, AssemblyEntry>>;

const osb: LayerEntry = { kind: 'board', material: 'osb', thickness_mm: 18 };
const dense: LayerEntry = { kind: 'board', material: 'plasterboard-dense', thickness_mm: 15 };
const gap: LayerEntry = { kind: 'cavity', depth_mm: 50, fill: { material: 'mineral-wool-45', thickness_mm: 50 } };

/** What a designed box may be built of, the lightest first. @source common practice: boards that every merchant has */
const CASINGS: readonly AssemblyEntry[] = [
  { name: 'Vent box of one board', layers: [osb] },
  { name: 'Vent box of two boards', layers: [osb, dense] },
  { name: 'Vent box of three boards', layers: [osb, dense, dense] },
  {
    name: 'Vent box of two shells',
    layers: [osb, dense, gap, osb],
    note: 'A box in a box: the shells touch nowhere but on strips of felt, wool between them.',
  },
];

/** The id under which a document has such boards for boxes, or the one that they would get. */
const idOf = ({ assemblies, vents = [] }: Project, { name, layers }: AssemblyEntry): string => {
  const casings = vents.flatMap(({ elements }) => elements.flatMap((it) => ('casing' in it ? [it.casing] : [])));
  const own = Object.entries(assemblies).find(
    ([id, it]) => equal(it.layers, layers) && (it.name === name || casings.includes(id)),
  );
  return own?.[0] ?? freshId(name, Object.keys(assemblies));
};

/** What boxes may be built of, under the ids of the project's own make-ups where it has such. */
export const boxCasings = (project: Project): NewAssemblies =>
  Object.fromEntries(CASINGS.map((entry) => [idOf(project, entry), entry]));

/** The same for the engine. */
export const toDesignCasings = (project: Project, casings: NewAssemblies): readonly DesignCasing[] =>
  Object.entries(casings).map(([key, entry]) => {
    const assembly = toAssembly(entry, project);
    return {
      key,
      wall: { assembly, surfaceMass: surfaceMass(assembly) },
      thickness: totalThickness(assembly),
    };
  });

/** Those of the make-ups that the document does not have yet. */
export const newAmong = ({ assemblies }: Project, wanted: NewAssemblies): NewAssemblies =>
  Object.fromEntries(Object.entries(wanted).filter(([id]) => !Object.hasOwn(assemblies, id)));

/** One layer of a casing, for a builder: what it is, and how thick, m. */
export interface CasingLayer {
  readonly name: string;
  readonly thickness: number;
}

/** The layers of a casing from inside the music room. */
export const casingLayers = (project: Project, { layers }: AssemblyEntry): readonly CasingLayer[] =>
  layers.map((layer) => {
    const material = layer.kind === 'cavity' ? (layer.fill?.material ?? '') : layer.material;
    const thickness_mm = layer.kind === 'cavity' ? layer.depth_mm : layer.thickness_mm;
    return { name: findMaterial(project, material)?.name ?? 'air', thickness: thickness_mm / 1000 };
  });
