import cases from './cases.json' with { type: 'json' };

/** The printed figures by case; a case or column that is missing throws. */
const given = (id: string): Readonly<Record<string, unknown>> => {
  const found = Object.entries(cases).find(([key]) => key === id)?.[1];
  if (!found) throw new Error(`reference case ${id} is missing`);
  return { ...found.inputs, ...found.expected };
};

export const value = (id: string, key: string): number => {
  const one = given(id)[key];
  if (typeof one !== 'number') throw new Error(`${id} lacks ${key}`);
  return one;
};

export const column = (id: string, key: string): number[] => {
  const many = given(id)[key];
  if (!Array.isArray(many)) throw new Error(`${id} lacks the column ${key}`);
  return many.map(Number);
};

/** Largest difference of two columns. */
export const apart = (ours: readonly number[], theirs: readonly number[]): number => {
  if (ours.length !== theirs.length || ours.length === 0) throw new Error('columns of different length');
  return Math.max(...ours.map((one, i) => Math.abs(one - (theirs[i] ?? Number.NaN))));
};

/** Exact band centres are not used by the printed example: nominal ones are, Hz. */
export const BANDS: readonly number[] = column('iso12354-1-L-elements', 'bands_hz');

/** Air of the printed example. */
export const EXAMPLE_AIR = { impedance: 438.6, soundSpeed: 340 };

export type ElementName = 'floor' | 'ext1' | 'ext2' | 'int1' | 'int2';
export const ELEMENTS = cases['iso12354-1-L-elements'].expected.elements;
