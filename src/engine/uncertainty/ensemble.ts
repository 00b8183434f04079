import { THIRD_OCTAVES } from '../quantities/index.ts';
import type { DrawnPart, PartDraw } from './drawnPart.ts';
import { drawInto } from './drawnPart.ts';
import { ERROR_COLUMNS, familyErrorInto } from './familyError.ts';
import type { Family } from './familyError.ts';
import type { UncertainInput } from './input.ts';
import { inputKey, uncertainInput } from './input.ts';
import type { BandError } from './modelError.ts';
import type { Care, Workmanship } from './workmanship.ts';

const BANDS = THIRD_OCTAVES.length;

/** Everything that is drawn together: parts, the inputs they share, the families whose errors they share. */
export interface Ensemble {
  readonly parts: readonly DrawnPart[];
  readonly inputs: readonly UncertainInput[];
  readonly families: readonly Family[];
  readonly joints: Care;
}

/** Number of columns of standard normal numbers that one set of draws needs: the inputs first, then each family's. */
export const columnCount = ({ inputs, families }: Ensemble): number => inputs.length + families.length * ERROR_COLUMNS;

/** Gathers what parts have in common. @param workmanship joints count where they are not flawless */
export const ensembleOf = (
  parts: readonly DrawnPart[],
  families: readonly Family[],
  workmanship: Workmanship,
): Ensemble => {
  const leaky = workmanship.joints.middle > 0 && parts.some((part) => part.joints > 0);
  const all = [...parts.flatMap((part) => part.inputs), ...(leaky ? [uncertainInput('joints', '')] : [])];
  const inputs = [...new Map(all.map((input) => [input.key, input])).values()];
  return { parts, inputs, families, joints: workmanship.joints };
};

/** Draws every part: for each of them `take` is called with its S·τ; the arrays are reused. */
export type DrawParts = (
  columns: readonly Float64Array[],
  draw: number,
  take: (part: number, drawn: PartDraw) => void,
) => void;

const withResidual = (error: BandError, residual: Float64Array): BandError => ({
  ...error,
  third: error.third.map((dB, b) => Math.hypot(dB, residual[b] ?? 0)),
});

/**
 * A drawer of all parts of an ensemble: each draw is one build that might come of the drawings.
 * @param ensemble parts, inputs and families
 * @param scale factor on every departure; 0 gives the middle
 * @returns drawer; the columns are those of columnCount
 */
export const createDrawer = (ensemble: Ensemble, scale: number): DrawParts => {
  const { parts, inputs, families, joints } = ensemble;
  const at = new Map(inputs.map(({ key }, i) => [key, i]));
  const joint = at.get(inputKey('joints', ''));
  const drawn = (): Float64Array => new Float64Array(BANDS);
  const prepared = parts.map((part) => {
    const f = families.findIndex((family) => family.name === part.family);
    const model = families[f]?.model;
    return {
      part,
      inputs: part.inputs.map(({ key }) => at.get(key) ?? -1),
      first: inputs.length + f * ERROR_COLUMNS,
      error: model && {
        chain: model.chain,
        bands: withResidual(model.bands, part.residual),
        rating: withResidual(model.rating, part.residual),
      },
      out: { bandError: drawn(), ratingError: drawn(), openArea: drawn(), ratedOpenArea: drawn() },
    };
  });
  return (columns, draw, take) => {
    const z = joint === undefined ? 0 : scale * (columns[joint]?.[draw] ?? 0);
    const leak = joint === undefined ? 0 : joints.middle * Math.exp(joints.spread * z);
    prepared.forEach(({ part, inputs: own, first, error, out }, p) => {
      if (error) {
        familyErrorInto(error.bands, error.chain, columns, first, draw, scale, out.bandError);
        familyErrorInto(error.rating, error.chain, columns, first, draw, scale, out.ratingError);
      }
      const ownColumns = own.map((i) => columns[i]);
      drawInto(part, ownColumns, draw, scale, leak, out);
      take(p, out);
    });
  };
};
