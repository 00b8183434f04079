import { structureOf, type Assembly } from '../../engine/assembly/index.ts';
import type { WorkingLine } from '../../engine/quantities/index.ts';
import type { Prediction } from '../../engine/transmission/index.ts';
import { coincidenceLines, resonanceLines } from './buildingLines.ts';
import { figure } from './wording.ts';

/** The mass of one leaf, and what of it is stiff. */
const leafLine = (leaf: Prediction['leaves'][number], assembly: Assembly): WorkingLine => {
  const parts = structureOf(assembly)
    .leaves.filter(({ layers }) => layers[0] === leaf.layers[0])
    .flatMap(({ boards }) =>
      boards.map(({ material, thickness }) => `${figure(material.density, 0)} · ${figure(thickness, 4)}`),
    );
  return {
    what: `Leaf ${leaf.name}: its mass, and the loss of its bending waves in place.`,
    equation: 'm′ = Σ ρᵢ · hᵢ',
    numbers: `${parts.join(' + ')}: ${figure(leaf.surfaceMass, 1)} kg/m²${leaf.criticalFrequency === null ? '' : `; η = ${figure(leaf.lossFactor, 3)}`}`,
    source: 'ISO 12354-1:2017, 4.1; loss factor: materials as listed, with what fittings and edges add',
  };
};

/** Where a band lies between the resonances and critical frequencies of what is built. */
const place = (prediction: Prediction, band: number): string => {
  const least = Math.min(...prediction.resonances, Infinity);
  const fc = prediction.criticalFrequencies.filter((it) => it < band * 1.12);
  const low =
    band < least
      ? 'below every resonance of leaves on air: the whole moves as one mass'
      : 'above the lowest resonance of leaves on air';
  if (prediction.resonances.length === 0)
    return fc.length > 0 ? 'at or above coincidence: stiffness and loss count' : 'below coincidence: mass counts';
  return fc.length > 0 ? `${low}; at or above a critical frequency, where loss counts` : low;
};

/** What every R of a make-up follows from: masses, stiffness and critical frequencies of the leaves, resonances on the air between. */
export const builtLines = (assembly: Assembly, prediction: Prediction): readonly WorkingLine[] => [
  ...prediction.leaves.map((leaf) => leafLine(leaf, assembly)),
  ...coincidenceLines(prediction).lines,
  ...resonanceLines(assembly, prediction).lines,
];

/** Where a band lies among the resonances and critical frequencies. */
export const placeLine = (prediction: Prediction, band: number): WorkingLine => ({
  what: `${band} Hz lies ${place(prediction, band)}.`,
  equation: 'f against f₀ and f_c',
  numbers: [
    `f = ${band} Hz`,
    ...prediction.resonances.map((f) => `f₀ = ${figure(f, 0)} Hz`),
    ...prediction.criticalFrequencies.map((f) => `f_c = ${figure(f, 0)} Hz`),
  ].join('; '),
  source: 'Fahy, Sound and Structural Vibration (1985), ch. 4; ISO 12354-1:2017, annex B',
});
