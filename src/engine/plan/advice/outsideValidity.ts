import type { Rule } from './look.ts';
import { figure } from './figure.ts';
import { bandRange } from './wording.ts';

/** A doubt is of this construction when it reaches the middle of the range, Hz. */
const TELLING_BAND = 500;

/**
 * Bands in which the prediction is a guess beyond its model, one note per reason.
 * @source the reasons come with the prediction
 */
export const outsideValidity: Rule = ({ prediction }) => {
  const byReason = new Map<string, number[]>();
  prediction.extrapolated.forEach((reason, i) => {
    if (reason !== null) byReason.set(reason, [...(byReason.get(reason) ?? []), prediction.bands[i] ?? 0]);
  });
  // what holds for every part at both ends of the range is said on the curve itself
  const telling = [...byReason].filter(([, bands]) => bands.includes(TELLING_BAND));
  return telling.map(([reason, bands]) => ({
    code: 'outside-validity',
    severity: 'hint',
    sentence: `The prediction ${bandRange(bands)} reaches beyond what it is made for. ${reason}`,
    figures: [
      figure('frequency', 'lowest band in doubt', bands[0] ?? 0),
      figure('frequency', 'highest band in doubt', bands.at(-1) ?? 0),
    ],
    about: {},
  }));
};
