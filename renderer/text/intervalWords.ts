import type { CurveIntervals, Interval, Target } from '../../src/engine/uncertainty/index.ts';
import { reportedFigure } from '../../src/worker/chance.ts';
import type { TargetEntry } from '../../src/project/schema.ts';
import { showDecibels } from './showFigures.ts';

type FigureKey = Target['figure'];

export const FIGURE_NAMES: Readonly<Record<FigureKey, string>> = {
  Rw: 'Rw',
  Rw_plus_C50_5000: 'Rw + C 50–5000',
  STC: 'STC',
  bass: 'Bass, 50–100 Hz',
};

/** "34–38": the reported whole decibels between which 90 of 100 builds end. */
export const rangeOf = (key: FigureKey, { p5, p95 }: Interval): string =>
  `${showDecibels(reportedFigure(key, p5))}–${showDecibels(reportedFigure(key, p95))}`;

/** The same for half of the builds. */
export const middleRangeOf = (key: FigureKey, { p25, p75 }: Interval): string =>
  `${showDecibels(reportedFigure(key, p25))}–${showDecibels(reportedFigure(key, p75))}`;

/** Whole decibels between which 90 of 100 builds, and half of them, end in one band. @param at its place among the bands */
export const bandRangesOf = (R: CurveIntervals, at: number): readonly [most: string, half: string] => {
  const whole = (curve: readonly number[]): string => showDecibels(curve[at]);
  return [`${whole(R.p5)}–${whole(R.p95)}`, `${whole(R.p25)}–${whole(R.p75)}`];
};

/** "Rw 45 dB", as a target is said. */
export const targetName = ({ rating, value_dB }: Pick<TargetEntry, 'rating' | 'value_dB'>): string =>
  `${FIGURE_NAMES[rating]} ${value_dB} dB`;

/** A chance in whole per cent that never claims certainty. */
export const chancePercent = (chance: number): string => {
  const percent = Math.round(100 * chance);
  if (percent >= 100) return 'over 99 %';
  return percent <= 0 ? 'under 1 %' : `${percent} %`;
};

/** How good a chance is, for someone who decides. */
export const chanceWords = (chance: number): string => {
  if (chance >= 0.95) return 'almost sure';
  if (chance >= 0.8) return 'likely';
  if (chance >= 0.6) return 'more likely than not';
  if (chance >= 0.4) return 'an even chance';
  if (chance >= 0.2) return 'rather unlikely';
  return chance >= 0.05 ? 'unlikely' : 'hardly';
};
