import type { Rung } from '../../../src/engine/plan/index.ts';

export type RungColumn = 'energyGain' | 'RwGain' | 'bassGain' | 'cost' | RungRate;
export type RungRate = 'gainPerCost' | 'gainPerThickness' | 'gainPerMass';

/** Rates as they are printed: dB for so much of it. */
export const RATES: readonly {
  readonly key: RungRate;
  readonly label: (currency: string | undefined) => string;
  /** how many of the engine's units the printed figure is for */
  readonly times: number;
}[] = [
  { key: 'gainPerCost', label: (currency) => `dB per ${currency ? `${currency} ` : ''}100`, times: 100 },
  { key: 'gainPerThickness', label: () => 'dB per 10 mm', times: 0.01 },
  { key: 'gainPerMass', label: () => 'dB per 100 kg', times: 100 },
];

/** Sorted by a column: gains and rates largest first, prices lowest first, unknown last; `reverse` turns the known ones. */
export const rungsBy = (rungs: readonly Rung[], column: RungColumn, reverse = false): readonly Rung[] => {
  const known = rungs.filter((rung) => rung[column] !== null);
  const direction = (column === 'cost' ? 1 : -1) * (reverse ? -1 : 1);
  const sorted = known.toSorted((a, b) => direction * ((a[column] ?? 0) - (b[column] ?? 0)));
  return [...sorted, ...rungs.filter((rung) => rung[column] === null)];
};
