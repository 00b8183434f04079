import type { Result } from '../../contract/methods.ts';
import { showFigure } from './table.ts';

type Ratings = Result<'rate'>['ratings'];

const ROWS: readonly (readonly [label: string, key: keyof Ratings])[] = [
  ['Rw, dB', 'Rw'],
  ['C', 'C'],
  ['Ctr', 'Ctr'],
  ['C 50-5000', 'C50_5000'],
  ['Ctr 50-5000', 'Ctr50_5000'],
  ['STC', 'STC'],
  ['OITC', 'OITC'],
  ['C 50-3150', 'C50_3150'],
  ['C 100-5000', 'C100_5000'],
  ['Ctr 50-3150', 'Ctr50_3150'],
  ['Ctr 100-5000', 'Ctr100_5000'],
];

export const ratingLabels: readonly string[] = ROWS.map(([label]) => label);

export const ratingCells = (ratings: Ratings): readonly string[] => ROWS.map(([, key]) => showFigure(ratings[key]));
