import type { ModelErrorRecord } from '../../../src/engine/uncertainty/index.ts';

/** One measured figure and the error of the method that it asks for. */
export interface ScoredFigure {
  readonly id: string;
  readonly constructionClass: string;
  /** octave or third octave, Hz; null for a single-number rating */
  readonly band: number | null;
  /** square of the method's standard deviation with which the stated 90 % interval would just hold the figure, dB² */
  readonly score: number;
}

/**
 * Smallest standard deviation of the method with which the stated intervals hold 90 of 100 figures: the ⌈0.9·(n + 1)⌉th
 * smallest score.
 * @source split conformal prediction: Vovk, Gammerman and Shafer, Algorithmic Learning in a Random World (2005), ch. 2
 */
export const conformalScale = (figures: readonly ScoredFigure[]): number | null => {
  if (figures.length === 0) return null;
  const scores = figures.map(({ score }) => score).sort((a, b) => a - b);
  const at = Math.min(scores.length, Math.ceil(0.9 * (scores.length + 1)));
  return Math.sqrt(Math.max(0, scores[at - 1] ?? 0));
};

const isRating = ({ band }: ScoredFigure): boolean => band === null;

/** The scales by class of construction, learned from some figures. */
export const errorScales = (figures: readonly ScoredFigure[]): ModelErrorRecord => {
  const kinds = [...new Set(figures.map((it) => it.constructionClass))].sort();
  const of = (kind: string) => figures.filter((it) => it.constructionClass === kind);
  const split = (list: readonly ScoredFigure[]) => [list.filter(isRating), list.filter((it) => !isRating(it))] as const;
  const [ratings, bands] = split(figures);
  const classes = kinds.map((kind) => {
    const [own, ownBands] = split(of(kind));
    const entry = {
      ratings: own.length,
      rating: conformalScale(own),
      bands: ownBands.length,
      band: conformalScale(ownBands),
    };
    return [kind, entry] as const;
  });
  return {
    all: { rating: conformalScale(ratings) ?? 0, band: conformalScale(bands) ?? 0 },
    classes: Object.fromEntries(classes),
  };
};
