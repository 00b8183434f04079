import type { Provenance } from '../../../src/engine/quantities/index.ts';
import type { LibraryEntry } from '../../../src/project/library.ts';
import type { MaterialEntry } from '../../../src/project/schema.ts';
import { showQuantity } from '../../text/showNumber.ts';
import { isLibraryEntry } from './materialWords.ts';

/** One value of a material, with its source. */
export interface MaterialFact {
  readonly term: string;
  readonly value: string;
  readonly source: string;
  /** false for what stands on memory or judgement and wants confirming */
  readonly firm: boolean;
}

const fact = (
  entry: MaterialEntry | LibraryEntry,
  key: string,
  term: string,
  value: number | undefined,
  unit: string,
): readonly MaterialFact[] => {
  if (value === undefined) return [];
  const given: Provenance | undefined = isLibraryEntry(entry) ? entry.sources[key] : undefined;
  const own = 'source' in entry && entry.source ? entry.source : 'your own figure, no source written down';
  const words: Readonly<Record<Provenance['how'], string>> = {
    published: 'read in',
    computed: 'worked out:',
    memory: 'from memory:',
    'common practice': 'common practice:',
    'engineering judgement': 'our judgement:',
  };
  return [
    {
      term,
      value: unit === '' ? String(value) : showQuantity(value, unit),
      source: given ? `${words[given.how]} ${given.source}` : own,
      firm: given ? given.how === 'published' || given.how === 'computed' : 'source' in entry && Boolean(entry.source),
    },
  ];
};

/** Every value of a material, in the order a builder asks for them. */
export const materialFacts = (entry: MaterialEntry | LibraryEntry): readonly MaterialFact[] => {
  const density = fact(entry, 'density_kg_m3', 'Density', entry.density_kg_m3, 'kg/m3');
  const price = fact(entry, 'price_per_m3', 'Price per m³ (illustrative)', entry.price_per_m3, '');
  if (entry.kind === 'porous')
    return [
      ...density,
      ...fact(entry, 'flow_resistivity_Pa_s_m2', 'Airflow resistivity', entry.flow_resistivity_Pa_s_m2, 'Pa·s/m2'),
      ...price,
    ];
  if (entry.kind === 'viscoelastic')
    return [
      ...density,
      ...fact(entry, 'shear_modulus_MPa', 'Shear modulus at 1 kHz', entry.shear_modulus_MPa, 'MPa'),
      ...fact(entry, 'loss_factor', 'Loss factor', entry.loss_factor, ''),
      ...price,
    ];
  return [
    ...density,
    ...fact(entry, 'youngs_GPa', 'Young’s modulus', entry.youngs_GPa, 'GPa'),
    ...fact(entry, 'poisson', 'Poisson’s ratio', entry.poisson, ''),
    ...fact(entry, 'loss_factor', 'Loss factor', entry.loss_factor, ''),
    ...price,
  ];
};

/** Stiffness or what stands for it, in one short figure for a list. */
export const stiffnessWords = (entry: MaterialEntry | LibraryEntry): string => {
  if (entry.kind === 'board') return entry.youngs_GPa === 0 ? 'limp' : `${entry.youngs_GPa} GPa`;
  if (entry.kind === 'porous') return `${Number((entry.flow_resistivity_Pa_s_m2 / 1000).toPrecision(2))} kPa·s/m²`;
  return `${entry.shear_modulus_MPa} MPa`;
};

export const lossWords = (entry: MaterialEntry | LibraryEntry): string =>
  entry.kind === 'porous' ? '–' : String(entry.loss_factor);
