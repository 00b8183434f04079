import { NEIGHBOURS } from '../../../src/engine/uncertainty/index.ts';
import type { ErrorScale, ModelErrorRecord } from '../../../src/engine/uncertainty/index.ts';
import { weightedQuantile } from './weightedQuantile.ts';
import type { Weighted } from './weightedQuantile.ts';

/** One measured figure and the error of the method that it asks for. */
export interface ScoredFigure {
  readonly id: string;
  readonly constructionClass: string;
  /** octave or third octave, Hz; null for a single-number rating */
  readonly band: number | null;
  /** square of the method's standard deviation with which the stated 90 % interval would just hold the figure, dB² */
  readonly score: number;
}

/** Share of the measured figures that the stated intervals are to hold. */
const HELD = 0.9;

/**
 * How much all other classes together tell of one class, as a number of its own figures. The scores of a class are taken
 * as draws from a law of its own that is itself a draw about the law of all classes.
 * @source Dirichlet process: Ferguson, Annals of Statistics 1 (1973) 209-230; the number by least interval score of the
 *   cases left out (Gneiting and Raftery, J. Am. Stat. Assoc. 102 (2007) 359-378): 3 to 8 do about as well
 */
const OTHERS = 5;

/**
 * How many independent figures the bands of one curve are worth, as far as their spread goes: N²/Σ Σ ρ², with the correlation
 * of errors so many octaves apart.
 * @source Bretherton and others, J. Climate 12 (1999) 1990-2009, effective number of degrees of freedom of a variance
 * @example independentFigures([125, 250, 500]) // 2.0
 */
export const independentFigures = (bands: readonly number[]): number => {
  const squares = bands.flatMap((band) => bands.map((other) => NEIGHBOURS ** (2 * Math.abs(Math.log2(band / other)))));
  return bands.length ** 2 / squares.reduce((sum, square) => sum + square, 0);
};

/**
 * Less than this no error of the method can be told from that of a test, dB: what one laboratory's tests of one part differ by.
 * @source ISO 12999-1:2020, table 3, repeatability of Rw (from memory)
 */
const LEAST = 0.4;

type Scored = readonly (readonly [figure: ScoredFigure, worth: number])[];

/** Each figure with what it is worth: a rating one, a band its share of its curve. */
const worths = (figures: readonly ScoredFigure[]): Scored => {
  const curves = Map.groupBy(figures, ({ id }) => id);
  return figures.map((figure) => {
    const bands = (curves.get(figure.id) ?? []).flatMap(({ band }) => band ?? []);
    return [figure, bands.length === 0 ? 1 : independentFigures(bands) / bands.length];
  });
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Every other class counts alike, however many of it were measured. */
const poolOf = (others: Scored): Weighted[] => {
  const classes = [...Map.groupBy(others, ([{ constructionClass }]) => constructionClass).values()];
  return classes.flatMap((list) => {
    const all = sum(list.map(([, worth]) => worth));
    return list.map(([{ score }, worth]): Weighted => [score, (OTHERS * worth) / (all * classes.length)]);
  });
};

/**
 * Smallest standard deviation of the method with which the stated intervals hold 90 of 100 figures of a class: the
 * quantile of its own scores, mixed with those of all other classes.
 * @param kind class of construction
 * @param figures ratings, or bands, of all classes
 */
const scaleOf = (kind: string, figures: Scored): number => {
  const own = figures.filter(([{ constructionClass }]) => constructionClass === kind);
  const others = figures.filter(([{ constructionClass }]) => constructionClass !== kind);
  const mixed = [...own.map(([{ score }, worth]): Weighted => [score, worth]), ...poolOf(others)];
  const worth = sum(own.map(([, each]) => each));
  // Kish: as many even figures as would tell as much
  const size = (worth + OTHERS) ** 2 / (worth + OTHERS ** 2 / sum(others.map(([, each]) => each)));
  return Math.sqrt(Math.max(LEAST ** 2, weightedQuantile(mixed, HELD, size)));
};

/** A learner of the scales from some figures; a class of which none is among them gets the scale of all. */
export const errorScaleOf = (figures: readonly ScoredFigure[]): ((kind: string) => ErrorScale) => {
  const [ratings, bands] = [worths(figures.filter(isRating)), worths(figures.filter((it) => !isRating(it)))];
  return (kind) => ({ rating: scaleOf(kind, ratings), band: scaleOf(kind, bands) });
};

const isRating = ({ band }: ScoredFigure): boolean => band === null;

/** The scales by class of construction, learned from some figures. */
export const errorScales = (figures: readonly ScoredFigure[]): ModelErrorRecord => {
  const scale = errorScaleOf(figures);
  const kinds = [...new Set(figures.map((it) => it.constructionClass))].sort();
  const classes = kinds.map((kind) => {
    const own = figures.filter((it) => it.constructionClass === kind);
    const ratings = own.filter(isRating).length;
    return [kind, { ratings, bands: own.length - ratings, ...scale(kind) }] as const;
  });
  return { all: scale('never measured'), classes: Object.fromEntries(classes) };
};
