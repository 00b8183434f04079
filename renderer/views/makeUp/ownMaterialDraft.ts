import { toOwnMaterial, type LibraryEntry } from '../../../src/project/library.ts';
import type { MaterialEntry } from '../../../src/project/schema.ts';
import type { MaterialUse } from './materialShelf.ts';
import { isLibraryEntry } from './materialWords.ts';

/** A number of a material as a field shows it. */
export interface DraftField {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly describe?: string;
}

const DENSITY = { key: 'density_kg_m3', label: 'Density', unit: 'kg/m3' };

/** Fields of each kind of material; ranges as in the document's schema. */
export const DRAFT_FIELDS: Readonly<Record<MaterialEntry['kind'], readonly DraftField[]>> = {
  board: [
    { ...DENSITY, min: 1, max: 25000, describe: 'Mass of a sheet divided by its volume' },
    { key: 'youngs_GPa', label: 'Young’s modulus', unit: 'GPa', min: 0, max: 1000, describe: '0 for a limp sheet' },
    { key: 'poisson', label: 'Poisson’s ratio', unit: '', min: 0, max: 0.499 },
    { key: 'loss_factor', label: 'Loss factor', unit: '', min: 0, max: 2, describe: 'Of the material, not mounted' },
  ],
  porous: [
    { ...DENSITY, min: 1, max: 500 },
    {
      key: 'flow_resistivity_Pa_s_m2',
      label: 'Airflow resistivity',
      unit: 'Pa·s/m2',
      min: 100,
      max: 1e6,
      describe: '5 kPa·s/m² is written 5000',
    },
  ],
  viscoelastic: [
    { ...DENSITY, min: 100, max: 5000 },
    { key: 'shear_modulus_MPa', label: 'Shear modulus at 1 kHz', unit: 'MPa', min: 0.0001, max: 10000 },
    { key: 'loss_factor', label: 'Loss factor', unit: '', min: 0, max: 5 },
  ],
};

const BLANK: Readonly<Record<MaterialUse, MaterialEntry>> = {
  board: {
    kind: 'board',
    family: 'other',
    name: '',
    density_kg_m3: 800,
    youngs_GPa: 3,
    poisson: 0.3,
    loss_factor: 0.02,
  },
  fill: { kind: 'porous', name: '', density_kg_m3: 30, flow_resistivity_Pa_s_m2: 8000 },
  interlayer: { kind: 'viscoelastic', name: '', density_kg_m3: 1100, shear_modulus_MPa: 0.4, loss_factor: 1 },
};

/** What a new material begins with: the values of another one, or usual figures. Its sources do not come along. */
export const beginDraft = (use: MaterialUse, basis: MaterialEntry | LibraryEntry | null): MaterialEntry => {
  if (!basis) return BLANK[use];
  return isLibraryEntry(basis) ? toOwnMaterial(basis) : basis;
};

/** The draft with one number changed. */
export const withNumber = (draft: MaterialEntry, key: string, value: number): MaterialEntry => ({
  ...draft,
  [key]: value,
});

export const numberOf = (draft: MaterialEntry, key: string): number | null => {
  const value = Object.entries(draft).find(([name]) => name === key)?.[1];
  return typeof value === 'number' ? value : null;
};
