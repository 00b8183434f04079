import type { WorkingLine } from '../../engine/quantities/index.ts';
import type { LeafSummary, Prediction } from '../../engine/transmission/index.ts';
import { strongestWay } from './wayLines.ts';
import { figure } from './wording.ts';

/** The band by which a make-up is shown; all bands go the same way. */
const SHOWN = 500;

const leafWords = ({ name, surfaceMass, bendingStiffness, criticalFrequency }: LeafSummary): string => {
  const bends =
    criticalFrequency === null
      ? 'limp'
      : `B = ${figure(bendingStiffness, 0)} N·m, f_c = ${figure(criticalFrequency, 0)} Hz`;
  return `${name}: m′ = ${figure(surfaceMass)} kg/m², ${bends}`;
};

/**
 * What R of a make-up follows from, in one line: its leaves, its resonances, and the way that lets most through.
 * @param name of the part
 * @param prediction of its make-up
 */
export const makeUpLine = (name: string, prediction: Prediction): WorkingLine => {
  const { leaves, resonances, bands, R } = prediction;
  return {
    what: `What ${name} is made of. At ${SHOWN} Hz most gets through it this way: ${strongestWay(prediction, SHOWN).toLowerCase()}. Its own rating, in the make-up’s working, shows every step.`,
    equation: `m′ = Σ ρᵢ · hᵢ, f_c = (c₀²/2π) · √(m′/B)${resonances.length > 0 ? ', f₀ = (1/2π) · √(ρ₀c₀² · (m₁ + m₂) / (d · m₁ · m₂))' : ''}`,
    numbers: [
      ...leaves.map(leafWords),
      ...resonances.map((f) => `f₀ = ${figure(f, 0)} Hz`),
      `as a laboratory would report it R = ${figure(R[bands.indexOf(SHOWN)] ?? 0)} dB`,
    ].join('; '),
    source:
      'ISO 12354-1:2017, 4.1 and annexes B and D; Hopkins, Sound Insulation (2007), eq. 2.201; Fahy (1985), ch. 4',
  };
};
