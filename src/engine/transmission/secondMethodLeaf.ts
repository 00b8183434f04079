import { AIR_IMPEDANCE, SOUND_SPEED, modulus, toTransmission } from '../quantities/index.ts';
import { freeWaveRadiation } from './freeWaveRadiation.ts';
import { leafStiffness } from './leafStiffness.ts';
import { forcedWaveRadiation, monolithicReduction } from './secondMethodMonolithic.ts';
import type { LeafModel } from './stack.ts';

/** Energy flow sees a leaf as one subsystem. */
export interface LeafFlow {
  readonly mass: number;
  readonly criticalFrequency: number | null;
  /** modal density, 1/Hz; 0 for a limp leaf, which has no waves of its own */
  readonly modes: number;
  /** to the air on one side */
  readonly radiation: number;
  readonly loss: number;
  /** |B|, N·m */
  readonly stiffness: number;
}

/** Where no stiffness tells a loss. @source common practice */
const SMALL_LOSS = 0.01;

const ownLoss = (leaf: LeafModel, frequency: number): number => {
  const B = leafStiffness(leaf, frequency);
  return B.re > 0 ? B.im / B.re : SMALL_LOSS;
};

/**
 * What an absorber in the cavity takes from the bending waves of a leaf: only from those slower than sound, whose near field
 * it damps; the band of the critical frequency and all above radiate instead.
 * @param absorbed loss factor that it adds
 * @source near field of slow waves: Fahy, Sound and Structural Vibration (1985), ch. 2
 */
export const slowWaveLoss = ({ criticalFrequency }: LeafModel, frequency: number, absorbed: number): number =>
  criticalFrequency === null || frequency < criticalFrequency * 2 ** (-1 / 6) ? absorbed : 0;

/** τ of one leaf by itself. @param added loss beside its own @source ISO 12354-1:2017, annex B */
export const leafTransmission = (
  leaf: LeafModel,
  frequency: number,
  size: readonly [number, number],
  added: number,
): number => {
  const { mass, criticalFrequency, wallImpedance } = leaf;
  if (criticalFrequency === null)
    return Math.min(1, 2 * forcedWaveRadiation(frequency, size) * (AIR_IMPEDANCE / (Math.PI * frequency * mass)) ** 2);
  const lossFactor = ownLoss(leaf, frequency) + added;
  const element = { surfaceMass: mass, criticalFrequency, lossFactor, wallImpedance, size };
  return toTransmission(monolithicReduction(element, frequency));
};

/**
 * A leaf at one frequency as energy flow sees it.
 * @param size sides of the part, m
 * @param bay sides of the piece that rings between studs, m
 * @param added loss that an absorber in the cavity adds
 * @source Price and Crocker, J. Acoust. Soc. Am. 47 (1970) 683-693; radiation factors ISO 12354-1:2017, annex B
 */
export const leafFlow = (
  leaf: LeafModel,
  frequency: number,
  size: readonly [number, number],
  bay: readonly [number, number],
  added: number,
): LeafFlow => {
  const omega = 2 * Math.PI * frequency;
  const fc = leaf.criticalFrequency;
  return {
    mass: leaf.mass,
    criticalFrequency: fc,
    modes: fc === null ? 0 : (Math.PI * size[0] * size[1] * fc) / SOUND_SPEED ** 2,
    radiation:
      fc === null ? 0 : (AIR_IMPEDANCE * freeWaveRadiation(frequency, fc, bay[0], bay[1])) / (omega * leaf.mass),
    loss: ownLoss(leaf, frequency) + added,
    stiffness: modulus(leafStiffness(leaf, frequency)),
  };
};
