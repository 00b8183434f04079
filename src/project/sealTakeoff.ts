import { sealLengths } from '../engine/openings/index.ts';
import { FITTING_DEFAULTS, type OpeningEntry, type SealsEntry } from './schema.ts';
import { sealAsGap } from './sealLeaks.ts';

type Panel = Exclude<OpeningEntry, { kind: 'slit' | 'hole' }>;
type Quality = SealsEntry['threshold'];

/** One joint of a leaf with the seal that goes into it. */
export interface SealedJoint {
  readonly leaf: 'first' | 'second';
  readonly joint: 'perimeter' | 'threshold';
  readonly quality: Quality;
  /** of joint, m */
  readonly length: number;
  /** metres of seal to buy: one line or two; none for an open joint */
  readonly seal: number;
  /** quite open gap that would let out as much, mm; per metre of joint ten times as many cm² */
  readonly asGap: number;
}

const linesOf = (quality: Quality): number => (quality === 'none' ? 0 : quality.startsWith('double-') ? 2 : 1);

const jointsOf = (seals: SealsEntry | undefined, leaf: SealedJoint['leaf'], panel: Panel): readonly SealedJoint[] => {
  if (!seals) return [];
  const lengths = sealLengths(panel.width_m, panel.height_m);
  const gaps = {
    perimeter: seals.gap_mm ?? FITTING_DEFAULTS.gap_mm,
    threshold: seals.threshold_gap_mm ?? FITTING_DEFAULTS.threshold_gap_mm,
  };
  return (['perimeter', 'threshold'] as const).map((joint) => ({
    leaf,
    joint,
    quality: seals[joint],
    length: lengths[joint],
    seal: linesOf(seals[joint]) * lengths[joint],
    asGap: sealAsGap(seals[joint]) ?? gaps[joint],
  }));
};

/** All joints of a door or window that are described, leaf by leaf. */
export const sealedJoints = (panel: Panel): readonly SealedJoint[] => [
  ...jointsOf(panel.seals, 'first', panel),
  ...(panel.second ? jointsOf(panel.second.seals, 'second', panel) : []),
];
