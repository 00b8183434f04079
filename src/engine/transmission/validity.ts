import type { Structure } from '../assembly/index.ts';
import { connectionOf } from './connection.ts';
import { constructionClass } from './constructionClass.ts';
import { lowEvidence } from './lowEvidence.ts';

const LOWEST = 'Rooms and parts are smaller than half a wave here; laboratories do not measure below 50 Hz.';
const LOW = 'Waves are as long as a room here; laboratories differ by 4 to 7 dB.';
const HIGH = 'Measured constructions of this kind end at 5 kHz; seams and small gaps decide here.';

const constructionReason = (structure: Structure): string | null => {
  const { leaves, cavities } = structure;
  const linked = cavities.some((cavity) => cavity.frame !== undefined);
  if (leaves.length > 3)
    return 'More than three leaves: no measured construction of this kind stands behind the model.';
  if (leaves.length === 3 && linked) return 'Three leaves joined by frames are an estimate from their pairs of leaves.';
  const clips = cavities.some((cavity) => cavity.frame?.fixing === 'isolating-clip');
  if (clips) return 'Isolating clips are judged from resilient bars; no measured wall on clips was at hand.';
  const foam = cavities.some((cavity) => cavity.fills.some((fill) => fill.material.kind === 'board'));
  if (foam) return 'Closed-cell foam between leaves is a simple spring here; no measured wall was at hand.';
  const steel = cavities.some((cavity, i) => {
    const first = leaves[i];
    const second = leaves[i + 1];
    if (!first || !second || cavity.frame?.stud !== 'steel') return false;
    const { gauge } = cavity.frame;
    return connectionOf(first, cavity, second) === 'studs' && gauge > 0.6e-3 && gauge < 1.1e-3;
  });
  return steel ? 'Steel studs between light and heavy gauge are interpolated.' : null;
};

/**
 * Why the model is outside its validity in a band, or null.
 * @param structure leaves and cavities
 * @param bands nominal centres, Hz
 * @returns a sentence or null per band
 * @source ISO 12999-1:2014 (spread of laboratories, from memory); tests/reference/tl (what was measured); engineering judgement
 */
export const validityOf = (structure: Structure, bands: readonly number[]): (string | null)[] => {
  const reason = constructionReason(structure);
  const low = `${LOW} ${lowEvidence(constructionClass(structure))}`;
  return bands.map((band) => {
    if (band < 45) return LOWEST;
    if (band < 90) return low;
    return band > 5500 ? HIGH : reason;
  });
};
