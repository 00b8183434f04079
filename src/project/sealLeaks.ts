import { JOINT_REDUCTION } from '../engine/openings/index.ts';
import type { SealsEntry } from './schema.ts';

type Quality = SealsEntry['threshold'];

/**
 * Width of the fully open gap that would let out as much as a closed joint, mm: 1000 · 10^(−Rs/10); per metre of joint
 * ten times as many cm². Null for a joint without a seal, which has its own gap.
 */
export const sealAsGap = (quality: Quality): number | null =>
  quality === 'none' ? null : 1000 * 10 ** (-JOINT_REDUCTION[quality] / 10);
