import { AIR_IMPEDANCE, SOUND_SPEED, modulus } from '../quantities/index.ts';
import { freeWaveRadiation } from './freeWaveRadiation.ts';
import { leafStiffness } from './leafStiffness.ts';
import { forcedWaveRadiation } from './secondMethodMonolithic.ts';
import type { LeafModel } from './stack.ts';

/** Energy flow sees a leaf as one subsystem. */
export interface LeafFlow {
  readonly mass: number;
  /** modal density, 1/Hz; 0 for a limp leaf, which has no waves of its own */
  readonly modes: number;
  /** to the air on one side */
  readonly radiation: number;
  readonly loss: number;
  /** non-resonant transmission coefficient */
  readonly forced: number;
  /** |B|, N·m */
  readonly stiffness: number;
}

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
  const B = leafStiffness(leaf, frequency);
  const limp = (AIR_IMPEDANCE / (Math.PI * frequency * leaf.mass)) ** 2;
  const fc = leaf.criticalFrequency;
  const below = fc === null || frequency < fc * 2 ** (-1 / 6);
  const slope = fc === null ? 1 : (1 - (frequency / fc) ** 2) ** 2;
  return {
    mass: leaf.mass,
    modes: fc === null ? 0 : (Math.PI * size[0] * size[1] * fc) / SOUND_SPEED ** 2,
    radiation:
      fc === null ? 0 : (AIR_IMPEDANCE * freeWaveRadiation(frequency, fc, bay[0], bay[1])) / (omega * leaf.mass),
    loss: (B.re > 0 ? B.im / B.re : 0) + added,
    forced: below ? Math.min(1, (2 * forcedWaveRadiation(frequency, size) * limp) / slope) : 0,
    stiffness: modulus(B),
  };
};
