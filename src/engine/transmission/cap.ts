import { toTransmission } from '../quantities/index.ts';
import type { Structure } from '../assembly/index.ts';
import { connectionOf } from './connection.ts';

/**
 * Highest sound reduction that a part reaches in a laboratory: flanking, seams and frames set it, not the theory.
 * Framed 64.5 dB, twin frames 66; bare single leaf or masonry 65, glass 58; lined masonry 71; unframed doubles 72, panes
 * as well, whose frame is frameTransmission.
 * @param structure leaves and cavities
 * @returns cap, dB
 * @validity good laboratory workmanship; on site less
 * @source engineering judgement: fitted to measured constructions, tests/reference/tl
 * @example reductionCap(structureOf(studWall)) // 64.5
 */
export const reductionCap = (structure: Structure): number => {
  const { leaves, cavities } = structure;
  if (leaves.length === 1) return leaves[0]?.glass ? 58 : 65;
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
export const capTransmission = (structure: Structure): number => toTransmission(reductionCap(structure));
