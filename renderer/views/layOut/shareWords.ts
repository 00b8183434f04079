import type { PartKind } from '../../../src/engine/shell/index.ts';
import { shareWords } from '../../text/shareWords.ts';

/** A share of what gets out as the subject of a sentence: "half of it". */
export const shareOfIt = (share: number): string => {
  const words = shareWords(share);
  return words === 'next to nothing' ? words : `${words} of it`;
};

/** A part's name inside a sentence: plain names take their article, names of one's own are quoted. */
export const nameInSentence = (name: string): string =>
  /^[A-Z][a-z]+(,? [a-z]+)*$/.test(name) ? `the ${name.toLowerCase()}` : `“${name}”`;

const MASSIVE: readonly PartKind[] = ['wall', 'roof', 'ceiling', 'floor'];

/** "half of it leaves by the extract vent" */
export const leavesBy = (share: number, part: { readonly name: string; readonly kind: PartKind }): string => {
  const way = MASSIVE.includes(part.kind) ? 'through' : 'by';
  return `${shareOfIt(share)} leaves ${way} ${nameInSentence(part.name)}`;
};

/** Five steps of tint and hatch: under 1 %, to 5 %, to 15 %, to 40 %, more. */
export const SHARE_STEPS: readonly number[] = [0.01, 0.05, 0.15, 0.4];
export const SHARE_STEP_NAMES: readonly string[] = ['under 1 %', '1 to 5 %', '5 to 15 %', '15 to 40 %', 'over 40 %'];
export const shareStep = (share: number): number => SHARE_STEPS.filter((least) => share >= least).length;
