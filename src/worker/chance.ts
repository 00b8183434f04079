/** Chance of a target from draws, for the window, which may not reckon itself. */
export { chanceOfTarget, reportedFigure } from '../engine/uncertainty/index.ts';
