import { requirePositive } from '../quantities/index.ts';
import { GENERATION, MET_COLUMNS } from './generationTable.ts';
import type { AgeGroup, Sex } from './generationTable.ts';
import { interpolate } from './interpolate.ts';

/** What people do in the room. */
export type Activity = 'listening' | 'playing-seated' | 'playing-standing' | 'drumming' | 'dancing';

/** People who do the same. */
export interface PeopleGroup {
  readonly name: string;
  readonly count: number;
  readonly activity: Activity;
  /** null: adults, mean of both sexes of 21 to 30 years */
  readonly person: { readonly sex: Sex; readonly age: AgeGroup } | null;
}

interface Exertion {
  readonly met: number;
  /** sensible and latent heat at 20, 22, 24 and 26 °C, W */
  readonly heat: readonly (readonly [number, number])[];
}

const AT: readonly number[] = [20, 22, 24, 26];

/**
 * Metabolic rate and heat by activity.
 * @source met: engineering judgement, so that players give off the 28 to 39 L/h of CO2 published for musicians; heat: Jones, Air
 * Conditioning Engineering, 5th ed., Table 7.16 (office, standing, light factory, dancing), the nearest by total heat
 */
export const EXERTIONS: Readonly<Record<Activity, Exertion>> = {
  listening: {
    met: 1.3,
    heat: [
      [100, 40],
      [90, 50],
      [80, 60],
      [70, 70],
    ],
  },
  'playing-seated': {
    met: 2.2,
    heat: [
      [105, 45],
      [95, 55],
      [82, 68],
      [72, 78],
    ],
  },
  'playing-standing': {
    met: 2.5,
    heat: [
      [130, 105],
      [115, 120],
      [100, 135],
      [80, 155],
    ],
  },
  drumming: {
    met: 3,
    heat: [
      [140, 125],
      [125, 140],
      [105, 160],
      [90, 175],
    ],
  },
  dancing: {
    met: 3,
    heat: [
      [140, 125],
      [125, 140],
      [105, 160],
      [90, 175],
    ],
  },
};

/**
 * CO2 that one person gives off, straight between the table's metabolic rates.
 * @param met metabolic rate, 1 to 4 met (held beyond)
 * @param person sex and age; null for adults in general, the mean of both sexes of 21 to 30 years
 * @returns m³/s
 * @throws RangeError for a metabolic rate ≤ 0
 * @source Persily & de Jonge, Indoor Air 27 (2017) 868-879, Table 4
 * @example carbonDioxideRate(2, { sex: 'male', age: '21-30' }) // 8.0e-6
 */
export const carbonDioxideRate = (met: number, person: PeopleGroup['person']): number => {
  requirePositive('metabolic rate', met, 'met');
  const rates = person ? [GENERATION[person.sex][person.age]] : [GENERATION.male['21-30'], GENERATION.female['21-30']];
  return rates.reduce((sum, row) => sum + interpolate(MET_COLUMNS, row, met) / 1000, 0) / rates.length;
};

/** CO2 given off by everybody, m³/s. */
export const carbonDioxideOf = (people: readonly PeopleGroup[]): number =>
  people.reduce(
    (sum, { count, activity, person }) => sum + count * carbonDioxideRate(EXERTIONS[activity].met, person),
    0,
  );

/** Number of people. */
export const headCount = (people: readonly PeopleGroup[]): number => people.reduce((sum, { count }) => sum + count, 0);

/**
 * Heat that everybody gives off.
 * @param temperature of the room, °C
 * @returns sensible and latent, W
 * @source Jones, Air Conditioning Engineering, 5th ed., Table 7.16; straight between 20, 22, 24 and 26 °C
 */
export const heatOf = (
  people: readonly PeopleGroup[],
  temperature: number,
): { readonly sensible: number; readonly latent: number } => {
  const sum = (column: 0 | 1): number =>
    people.reduce((all, { count, activity }) => {
      const values = EXERTIONS[activity].heat.map((pair) => pair[column]);
      return all + count * interpolate(AT, values, temperature);
    }, 0);
  return { sensible: sum(0), latent: sum(1) };
};
