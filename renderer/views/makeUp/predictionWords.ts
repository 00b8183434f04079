import type { Prediction } from '../../../src/engine/transmission/index.ts';
import { bassWords, ratingWords } from '../../text/ratingWords.ts';
import { bassFigure } from './bassFigure.ts';

/** What is heard through a part by itself: speech first, then bass. */
export const predictionWords = (prediction: Prediction): string => {
  const bass = bassWords(bassFigure(prediction));
  const { Rw } = prediction.ratings;
  return Rw === null ? `By itself: ${bass}.` : `By itself: ${ratingWords(Rw)}; ${bass}.`;
};
