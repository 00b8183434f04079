import { AIR_IMPEDANCE, toReduction, toTransmission } from '../quantities/index.ts';
import { cavityDepth, cavityField } from './secondMethodCavity.ts';
import { frameFlow } from './secondMethodFrame.ts';
import { leafTransmission, slowWaveLoss } from './secondMethodLeaf.ts';
import { forcedWaveRadiation } from './secondMethodMonolithic.ts';
import type { GapModel, LeafModel } from './stack.ts';

/** Width of a bay where no frame tells it, m. @source engineering judgement: as in framed walls */
const BAY = 0.6;

/** What two leaves gain at most over the sum of both where the cavity is deep against the wavelength, dB. @source Sharp (1978) */
const FAR_APART = 6;

/** Two leaves on a cavity, as the second method sees them. */
export interface DoubleLeaf {
  readonly first: LeafModel;
  readonly gap: GapModel;
  readonly second: LeafModel;
  /** m */
  readonly size: readonly [number, number];
  /** mass-air-mass resonance, Hz */
  readonly resonance: number;
}

/** What the cavity makes of the sum R1 + R2 on the straight way across: 20 lg(f·d) − 29, at most 6, dB. */
const crossing = (frequency: number, depth: number): number =>
  toTransmission(Math.min(FAR_APART, 20 * Math.log10(frequency * depth) - 29));

/**
 * Sound reduction index of a double leaf in closed form. Below the mass-air-mass resonance both leaves move as one mass. Above
 * it sound crosses straight, τ = τ1·τ2/(20 lg(f·d) − 29 dB, at most 6 dB), and as the field that is left in the cavity after
 * each free path ℓ: τ = τ1·τ2·(ℓ/4d)·q/(1 − q). What runs through the frame adds to that.
 * @param wall leaves, cavity, frame, size, resonance
 * @param frequency f, Hz, > 0, nominal centre of a third octave
 * @returns R, dB
 * @validity third octaves above the octave of the mass-air-mass resonance: its dip is not in it; no seams and seals
 * @source Sharp, Noise Control Eng. 11 (1978) 53-63 (straight way); Kuttruff, Room Acoustics (energy that is left after each
 *   free path); leaves: ISO 12354-1:2017, annex B; frame: Craik and Smith (2000), Sharp (1978); forms from memory
 * @example doubleLeafReduction(wall, 500)
 */
export const doubleLeafReduction = (wall: DoubleLeaf, frequency: number): number => {
  const { first, gap, second, size, resonance } = wall;
  if (frequency < resonance) {
    const limp = (AIR_IMPEDANCE / (Math.PI * frequency * (first.mass + second.mass))) ** 2;
    return toReduction(Math.min(1, 2 * forcedWaveRadiation(frequency, size) * limp));
  }
  const depth = cavityDepth(gap.layers);
  const bay = gap.links[0]?.bay ?? ([Math.min(BAY, size[0]), size[1]] as const);
  const absorbed = Math.max(0, ...gap.links.map((link) => link.addedLoss));
  const [one, other] = [first, second].map((leaf) =>
    leafTransmission(leaf, frequency, size, slowWaveLoss(leaf, frequency, absorbed)),
  ) as [number, number];
  const { left, freePath } = cavityField(gap.layers, frequency, bay);
  const reverberant = ((freePath / (4 * depth)) * left) / (1 - left);
  const air = one * other * (crossing(frequency, depth) + reverberant);
  const frame = frameFlow({ first, second, links: gap.links, size, bay, absorbed }, frequency);
  return toReduction(Math.min(1, air + frame));
};
