import type { Assembly, Structure } from '../../assembly/index.ts';
import { structureOf } from '../../assembly/index.ts';
import { bandNumber } from '../../quantities/index.ts';
import type { Note } from '../../quantities/index.ts';
import type { Prediction } from '../../transmission/index.ts';

/** Predicts an assembly as a laboratory would report it, at full resolution. */
export type PredictAlternative = (assembly: Assembly) => Prediction;

/** What a rule looks at. */
export interface Look {
  readonly assembly: Assembly;
  readonly structure: Structure;
  readonly prediction: Prediction;
  readonly predict: PredictAlternative;
}

/** One rule of the trade: the notes it raises about an assembly. */
export type Rule = (look: Look) => Note[];

/** @param predict predicts the assembly and its alternatives */
export const lookAt = (assembly: Assembly, predict: PredictAlternative): Look => ({
  assembly,
  structure: structureOf(assembly),
  prediction: predict(assembly),
  predict,
});

/** R of a prediction in the band that holds a frequency (Hz), dB. */
export const reductionAt = (prediction: Prediction, frequency: number): number => {
  const wanted = Math.min(10, Math.max(-16, bandNumber(frequency)));
  return prediction.R[prediction.bands.findIndex((band) => bandNumber(band) === wanted)] ?? 0;
};

/** nominal band that holds a frequency, Hz */
export const bandOf = (prediction: Prediction, frequency: number): number =>
  prediction.bands.find((band) => bandNumber(band) === bandNumber(frequency)) ?? frequency;

/** R of `after` less R of `before` in the band of a frequency, dB. */
export const gainAt = (before: Prediction, after: Prediction, frequency: number): number =>
  reductionAt(after, frequency) - reductionAt(before, frequency);

/** Change of Rw, dB; 0 where one is not rated. */
export const RwGainOf = (before: Prediction, after: Prediction): number =>
  (after.ratings.Rw ?? 0) - (before.ratings.Rw ?? 0);

/** The bands, within a range, that meet a test; nominal, Hz. */
export const bandsWhere = (
  prediction: Prediction,
  from: number,
  to: number,
  test: (band: number) => boolean,
): number[] => prediction.bands.filter((band) => band >= from && band <= to && test(band));
