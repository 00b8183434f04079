import { AIR_BULK_MODULUS } from '../quantities/index.ts';
import type { Coupling, FluidLayer, GapModel, LeafModel } from './stack.ts';

/** Depth of a gap over all its layers, m. */
export const gapDepth = (layers: readonly FluidLayer[]): number => layers.reduce((sum, layer) => sum + layer.depth, 0);

/**
 * Stiffness that boards fixed to the same studs set against moving apart: 1/s = 1/s1 + 1/s2 + C·b, s = κ·B/b⁴, N/m³.
 * It moves the mass-air-mass resonance of a stud wall up, to 120 Hz for single boards on studs at 400 mm.
 * @source Bradley and Birta, J. Acoust. Soc. Am. 110 (2001) 3086-3096 (primary structural resonance of walls on timber
 *   studs; from memory); stiffness of a strip's first mode, textbook
 */
const bayStiffness = (bay: Coupling['bay'], first: LeafModel, second: LeafModel): number => {
  if (!bay) return 0;
  const strip = (leaf: LeafModel): number =>
    (bay.kappa * leaf.plates.reduce((sum, plate) => sum + plate.bending, 0)) / bay.spacing ** 4;
  const s1 = strip(first);
  const s2 = strip(second);
  return s1 > 0 && s2 > 0 ? 1 / (1 / s1 + 1 / s2 + bay.compliance * bay.spacing) : 0;
};

/** Resonance of two leaves on a gap and the strips between its studs, Hz. @see massAirMassResonance */
export const gapResonance = (gap: GapModel, first: LeafModel, second: LeafModel): number => {
  const spring = AIR_BULK_MODULUS / gapDepth(gap.layers) + bayStiffness(gap.coupling?.bay ?? null, first, second);
  return Math.sqrt((spring * (first.mass + second.mass)) / (first.mass * second.mass)) / (2 * Math.PI);
};

/**
 * Impedance that studs put in parallel with the cavity: a loss ηr·K0/(ωD) and a bay's stiffness s·(1 + jη)/(jω), both
 * fading above twice the resonance as 1/(1 + (f/2f0)⁴).
 * @source bayStiffness; losses and fading: engineering judgement, fitted to measured constructions (tests/reference/tl)
 */
export const couplingImpedance = (
  gap: GapModel,
  first: LeafModel,
  second: LeafModel,
  frequency: number,
): { readonly re: number; readonly im: number } => {
  const { coupling } = gap;
  if (!coupling) return { re: 0, im: 0 };
  const omega = 2 * Math.PI * frequency;
  const fade = 1 / (1 + (frequency / (2 * gapResonance(gap, first, second))) ** 4);
  const loss = (coupling.resistance * AIR_BULK_MODULUS) / gapDepth(gap.layers);
  const stiffness = bayStiffness(coupling.bay, first, second);
  return {
    re: (fade * (loss + stiffness * (coupling.bay?.lossFactor ?? 0))) / omega,
    im: (-fade * stiffness) / omega,
  };
};
