import { THIRD_OCTAVES, toReduction } from '../quantities/index.ts';
import type { Part, PartTransmission } from '../shell/index.ts';
import type { Family } from './familyError.ts';
import { OCTAVE_COUNT } from './familyError.ts';
import { figureOf } from './figures.ts';
import { errorModel, errorScale, laboratoryErrorModel } from './modelError.ts';
import type { ModelErrorRecord } from './modelError.ts';

/** By how much an octave is moved to see how the rating weighs it, dB. */
const MOVE = 3;

/**
 * How Rw weighs the octaves of a curve: (Rw(R + 3 dB in the octave) − Rw(R − 3 dB))/6 dB.
 * @param R dB per third octave 25 Hz to 10 kHz
 * @returns one weight for each of the nine octaves; they add up to about 1
 * @source finite difference of ISO 717-1:2020, 4.4
 */
export const octaveWeights = (R: readonly number[]): readonly number[] =>
  Array.from({ length: OCTAVE_COUNT }, (_, o) => {
    const moved = (by: number): number =>
      figureOf(
        'Rw',
        R.map((value, b) => (Math.floor(b / 3) === o ? value + by : value)),
      );
    return (moved(MOVE) - moved(-MOVE)) / (2 * MOVE);
  });

/**
 * The family of a part: which error of the method, or of a laboratory, it shares with others.
 * @param record scales learned from measurements
 * @returns family; null for openings and what is sealed
 */
export const familyOf = (part: Part, passes: PartTransmission, record: ModelErrorRecord): Family | null => {
  const { element } = part;
  const { family: name, spread } = passes;
  switch (element.kind) {
    case 'slit':
    case 'hole':
    case 'sealed':
      return null;
    case 'assembly': {
      const weights = octaveWeights(THIRD_OCTAVES.map((_, b) => toReduction((passes.openArea[b] ?? 0) / passes.area)));
      return { name, of: name, kind: 'method', model: errorModel(errorScale(name, record), weights) };
    }
    case 'measured':
      return { name, of: part.name, kind: 'measured', model: laboratoryErrorModel(spread) };
    default:
      return { name, of: part.name, kind: 'method', model: laboratoryErrorModel(spread) };
  }
};

/** Each family once; what shares a laboratory's curve is named together. */
export const distinctFamilies = (families: readonly Family[]): readonly Family[] => {
  const names = [...new Set(families.map(({ name }) => name))];
  return names.flatMap((name) => {
    const same = families.filter((family) => family.name === name);
    const [first] = same;
    return first ? [{ ...first, of: [...new Set(same.map(({ of }) => of))].join(', ') }] : [];
  });
};
