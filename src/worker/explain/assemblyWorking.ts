import type { Evaluator } from '../../engine/evaluate.ts';
import type { Working } from '../../engine/quantities/index.ts';
import { lowEvidence, type Prediction } from '../../engine/transmission/index.ts';
import type { Project } from '../../project/schema.ts';
import type { Explained } from '../protocol.ts';
import { builtLines } from './builtLines.ts';
import { coincidenceLines, massLines, resonanceLines } from './buildingLines.ts';
import { assemblyOf, predicted } from './predicted.ts';
import { bassFigure, classFigure, weightedFigure, type Figured } from './ratingLines.ts';
import { wayLines, type JudgedBy } from './wayLines.ts';
import { figure, likely } from './wording.ts';

type Figure = Extract<Explained, { kind: 'assembly' }>['figure'];

const TITLES: Readonly<Record<Figure, string>> = {
  Rw: 'Weighted sound reduction index',
  STC: 'Sound transmission class',
  bass: 'Bass figure',
  mass: 'Mass per area',
  resonance: 'Mass-air-mass resonance',
  coincidence: 'Critical frequency',
};

/** What every prediction of a make-up takes for granted. */
export const taken = ({ constructionClass, resolution }: Prediction): readonly string[] => [
  'sealed all round and built as well as in a laboratory; on site expect some dB less',
  'size as in a laboratory: 4 × 2.5 m, parts all of glass 1.48 × 1.23 m, a bare board as one sheet of 2.4 × 1.2 m',
  `construction taken as: ${constructionClass}`,
  ...(resolution === 'draft' ? ['coarse steps while something is being dragged'] : []),
];

const figured = (prediction: Prediction, project: Project, id: string, which: Figure): Figured => {
  const curve = { bands: prediction.bands, values: prediction.R };
  const rated = ({ value, lines }: Figured, by: JudgedBy): Figured => ({
    value,
    lines: [...builtLines(assemblyOf(project, id), prediction), ...wayLines(prediction, by), ...lines],
  });
  switch (which) {
    case 'Rw':
      return rated(weightedFigure(curve), which);
    case 'STC':
      return rated(classFigure(curve), which);
    case 'bass':
      return rated(bassFigure(curve), which);
    case 'mass':
      return massLines(project, id);
    case 'resonance':
      return resonanceLines(assemblyOf(project, id), prediction);
    case 'coincidence':
      return coincidenceLines(prediction);
  }
};

const errorOf = (prediction: Prediction, which: Figure): string => {
  const kind = `the kind “${prediction.constructionClass}”`;
  const at = (band: number): number => prediction.spread[prediction.bands.indexOf(band)] ?? prediction.ratingSpread;
  switch (which) {
    case 'Rw':
    case 'STC':
      return likely(prediction.ratingSpread, kind);
    case 'bass':
      return `${likely(at(63), `one band near 63 Hz of ${kind}`)} ${lowEvidence(prediction.constructionClass)}`;
    case 'mass':
      return 'As exact as the densities: sheets of one kind differ by up to ±5 % (common practice). Weigh one.';
    case 'resonance':
      return `Within about ${figure(15, 0)} %: a filled cavity resonates up to that much lower (Fahy 1985, ch. 4).`;
    case 'coincidence':
      return 'Within about 10 to 20 %: stiffness differs between makes and with damp (common practice).';
  }
};

/** A figure of a make-up, worked out. */
export const assemblyWorking = (evaluator: Evaluator, project: Project, id: string, which: Figure): Working => {
  const prediction = predicted(evaluator, project, id);
  const { value, lines } = figured(prediction, project, id, which);
  const curve = which === 'Rw' || which === 'STC' || which === 'bass';
  return {
    title: `${TITLES[which]} of ${project.assemblies[id]?.name ?? id}`,
    value,
    lines,
    assumptions: curve ? taken(prediction) : which === 'mass' ? ['studs, bars and screws are not counted'] : [],
    likelyError: errorOf(prediction, which),
  };
};
