import { toTransmission } from '../quantities/index.ts';
import type { Structure } from '../assembly/index.ts';
import { connectionOf } from './connection.ts';

/**
 * What the heavy walls of a laboratory carry past bare masonry: 62 dB up to 1 kHz, 3 dB more with every octave above it.
 * @source a transmission suite of 1990 reached 65 dB in the mean (BBC Research Department, report 1990/13); slope:
 *   engineering judgement, slabs and brick of tests/reference/tl
 */
const pastMasonry = (frequency: number): number => 62 + 3 * Math.max(0, Math.log2(frequency / 1000));

/**
 * Highest sound reduction that a part reaches in a laboratory: flanking, seams and frames set it, not the theory.
 * Framed 64.5 dB, twin frames 66; single boards 65, glass 58; bare masonry 62 dB rising above 1 kHz; lined masonry 71;
 * unframed doubles 72, panes as well, whose frame is frameTransmission.
 * @param structure leaves and cavities
 * @param frequency f, Hz, > 0
 * @returns cap, dB
 * @validity good laboratory workmanship; on site less
 * @source engineering judgement: fitted to measured constructions, tests/reference/tl
 * @example reductionCap(structureOf(studWall), 500) // 64.5
 */
export const reductionCap = (structure: Structure, frequency: number): number => {
  const { leaves, cavities } = structure;
  const [only] = leaves;
  if (leaves.length === 1 && only?.masonry) return pastMasonry(frequency);
  if (leaves.length === 1) return only?.glass ? 58 : 65;
  if (leaves.some((leaf) => leaf.masonry)) return 71;
  const pairs = cavities.flatMap((cavity, i) => {
    const first = leaves[i];
    const second = leaves[i + 1];
    return first && second ? [connectionOf(first, cavity, second)] : [];
  });
  if (pairs.every((connection) => connection === 'twin')) return 66;
  return pairs.some((connection) => connection !== 'free' && connection !== 'glazed') ? 64.5 : 72;
};

/** The cap as a transmission coefficient. @see reductionCap */
export const capTransmission = (structure: Structure, frequency: number): number =>
  toTransmission(reductionCap(structure, frequency));
