import { shownUnit } from '../../text/units.ts';
import { isHatchName, type HatchName } from '../../drawings/hatch.ts';
import { USUAL_DEPTHS } from '../../drawings/snapThickness.ts';
import { findMaterial, type LibraryEntry } from '../../../src/project/library.ts';
import { RIGID_ADHESIVE, type LayerEntry, type MaterialEntry, type Project } from '../../../src/project/schema.ts';

type BoardEntry = Extract<MaterialEntry, { kind: 'board' }>;

export const isLibraryEntry = (entry: MaterialEntry | LibraryEntry): entry is LibraryEntry => 'hatch' in entry;

/** Hatch of a material of the project's own, which names none: by how it behaves. */
const HATCH_OF_FAMILY: Readonly<Record<BoardEntry['family'], HatchName>> = {
  gypsum: 'plasterboard',
  wood: 'sheet-wood',
  glass: 'glass',
  metal: 'metal',
  mineral: 'masonry',
  soft: 'foam',
  polymer: 'membrane',
  other: 'concrete',
};

export const hatchOfEntry = (entry: MaterialEntry | LibraryEntry | null): HatchName => {
  if (!entry) return 'air';
  if (isLibraryEntry(entry) && isHatchName(entry.hatch)) return entry.hatch;
  if (entry.kind === 'porous') return 'wool';
  return entry.kind === 'viscoelastic' ? 'interlayer' : HATCH_OF_FAMILY[entry.family];
};

export const hatchOfMaterial = (project: Project, material: string): HatchName =>
  material === RIGID_ADHESIVE ? 'interlayer' : hatchOfEntry(findMaterial(project, material));

/** A material's name; of one that is nowhere to be found, its id. */
export const materialName = (project: Project, material: string): string =>
  material === RIGID_ADHESIVE
    ? 'Rigid adhesive (bonded)'
    : shownUnit(findMaterial(project, material)?.name ?? material);

/** Thicknesses that merchants stock, mm; of a cavity, usual depths. */
export const usualThicknesses = (project: Project, layer: LayerEntry): readonly number[] => {
  if (layer.kind === 'cavity') return USUAL_DEPTHS;
  const entry = findMaterial(project, layer.material);
  return entry && isLibraryEntry(entry) ? entry.thicknesses_mm : [];
};

/** A layer in words: "Plasterboard, dense", "Cavity, stone wool in it". */
export const layerName = (project: Project, layer: LayerEntry): string => {
  if (layer.kind !== 'cavity') return materialName(project, layer.material);
  return layer.fill ? `Cavity with ${materialName(project, layer.fill.material)}` : 'Cavity, empty';
};
