import * as v from 'valibot';
import absorbers from '../../assets/materials/absorbers.json' with { type: 'json' };
import boards from '../../assets/materials/boards.json' with { type: 'json' };
import doors from '../../assets/materials/doors.json' with { type: 'json' };
import glass from '../../assets/materials/glass.json' with { type: 'json' };
import interlayers from '../../assets/materials/interlayers.json' with { type: 'json' };
import masonry from '../../assets/materials/masonry.json' with { type: 'json' };
import membranes from '../../assets/materials/membranes.json' with { type: 'json' };
import metals from '../../assets/materials/metals.json' with { type: 'json' };
import timber from '../../assets/materials/timber.json' with { type: 'json' };
import type { Provenance } from '../engine/quantities/index.ts';
import { id } from './fields.ts';
import { boardMaterial, porousMaterial, viscoelasticMaterial } from './materialSchema.ts';
import type { MaterialEntry, Project } from './schema.ts';

const how = v.picklist(['published', 'computed', 'memory', 'common practice', 'engineering judgement']);
const provenance: v.GenericSchema<unknown, Provenance> = v.strictObject({ how, source: v.string() });

/** What the library says of a material beside its values: where each comes from, how it is sold, drawn and grouped. */
const shown = {
  thicknesses_mm: v.array(v.number()),
  hatch: v.string(),
  group: v.string(),
  sources: v.record(v.string(), provenance),
};

const libraryGroup = v.strictObject({
  about: v.string(),
  materials: v.record(
    id,
    v.variant('kind', [
      v.strictObject({ ...boardMaterial.entries, ...shown }),
      v.strictObject({ ...porousMaterial.entries, ...shown }),
      v.strictObject({ ...viscoelasticMaterial.entries, ...shown }),
    ]),
  ),
});

export type LibraryEntry = v.InferOutput<typeof libraryGroup>['materials'][string];

const groups: readonly unknown[] = [boards, timber, masonry, glass, metals, absorbers, membranes, interlayers, doors];

/** Generic materials that come with the program, by id. */
export const library: Readonly<Record<string, LibraryEntry>> = Object.fromEntries(
  groups.flatMap((group) => Object.entries(v.parse(libraryGroup, group).materials)),
);

/** The material that an id means in a project: the project's own first, then the library's; null where there is none. */
export const findMaterial = (project: Project, material: string): MaterialEntry | LibraryEntry | null => {
  const own = project.materials;
  if (own && Object.hasOwn(own, material)) return own[material] ?? null;
  return Object.hasOwn(library, material) ? (library[material] ?? null) : null;
};

/** Ids of every material that a project can use: its own and the library's. */
export const materialIds = (project: Project): readonly string[] => [
  ...new Set([...Object.keys(project.materials ?? {}), ...Object.keys(library)]),
];

/** A library material as an entry for a project's own materials, to be changed there. */
export const toOwnMaterial = (entry: LibraryEntry): MaterialEntry => {
  const values = Object.entries(entry).filter(([key]) => !Object.hasOwn(shown, key));
  return Object.fromEntries(values) as MaterialEntry;
};
