import type { PartKind } from '../../../src/engine/shell/index.ts';

const STEPS: readonly (readonly [least: number, words: string])[] = [
  [0.97, 'practically all of it'],
  [0.86, 'nine tenths of it'],
  [0.78, 'four fifths of it'],
  [0.71, 'three quarters of it'],
  [0.6, 'two thirds of it'],
  [0.55, 'more than half of it'],
  [0.45, 'half of it'],
  [0.37, 'two fifths of it'],
  [0.29, 'a third of it'],
  [0.225, 'a quarter of it'],
  [0.18, 'a fifth of it'],
  [0.13, 'a seventh of it'],
  [0.075, 'a tenth of it'],
  [0.035, 'a twentieth of it'],
  [0.01, 'a fiftieth of it'],
];

/** A share of the energy as people say it. @param share 0 to 1 */
export const shareInWords = (share: number): string =>
  STEPS.find(([least]) => share >= least)?.[1] ?? 'next to nothing';

/** A share as printed: whole percent, and no zero for what is not nothing. */
export const sharePercent = (share: number): string => {
  if (share > 0 && share < 0.005) return '< 1 %';
  return share < 1 && share >= 0.995 ? '> 99 %' : `${Math.round(share * 100)} %`;
};

/** A part's name inside a sentence: plain names take their article, names of one's own are quoted. */
export const nameInSentence = (name: string): string =>
  /^[A-Z][a-z]+( [a-z]+)*$/.test(name) ? `the ${name.toLowerCase()}` : `“${name}”`;

const MASSIVE: readonly PartKind[] = ['wall', 'roof', 'ceiling', 'floor'];

/** "half of it leaves by the extract vent" */
export const leavesBy = (share: number, part: { readonly name: string; readonly kind: PartKind }): string => {
  const way = MASSIVE.includes(part.kind) ? 'through' : 'by';
  return `${shareInWords(share)} leaves ${way} ${nameInSentence(part.name)}`;
};

/** Five steps of tint and hatch: under 1 %, to 5 %, to 15 %, to 40 %, more. */
export const SHARE_STEPS: readonly number[] = [0.01, 0.05, 0.15, 0.4];
export const SHARE_STEP_NAMES: readonly string[] = ['under 1 %', '1 to 5 %', '5 to 15 %', '15 to 40 %', 'over 40 %'];
export const shareStep = (share: number): number => SHARE_STEPS.filter((least) => share >= least).length;
