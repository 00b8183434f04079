import type { ModelErrorRecord } from '../../../src/engine/uncertainty/index.ts';
import type { Coverage } from './coverage.ts';
import { coverageRows, failedCoverage } from './coverageTable.ts';

/** Further than this a record is not the one that the measured cases teach, dB. */
const DRIFT = 0.75;
/** What is judged, so that a lost sample fails. */
const [RATINGS, BANDS] = [222, 304];

const apart = (a: number | undefined, b: number): boolean => !(Math.abs((a ?? Number.NaN) - b) < DRIFT);

/** Where a record in use is not the one that the cases teach, in words. */
const drifted = (kept: ModelErrorRecord, learned: ModelErrorRecord): string[] => {
  const renew = 'npm run validate -- --record renews it';
  const all = apart(kept.all.rating, learned.all.rating) || apart(kept.all.band, learned.all.band);
  const strangers = Object.keys(kept.classes).filter((kind) => !learned.classes[kind]);
  const classes = Object.entries(learned.classes).flatMap(([kind, scale]) => {
    const own = kept.classes[kind];
    return own?.ratings === scale.ratings && own.bands === scale.bands && !apart(own.band, scale.band) ? [] : [kind];
  });
  return [...(all ? ['all'] : []), ...strangers, ...classes].map(
    (kind) => `${kind}: the error of the method in use is not what the cases teach; ${renew}`,
  );
};

/**
 * What does not hold of the stated intervals, in words: kinds and classes outside 85 to 95 of 100, figures that are
 * missing or are not numbers, and a record in use that the cases no longer teach.
 * @param judged every case judged by what all others teach
 * @param kept the record that the program uses; null while it is being renewed
 */
export const coverageFaults = (judged: Coverage, kept: ModelErrorRecord | null): readonly string[] => {
  const { covered, record } = judged;
  const ratings = covered.filter(({ band }) => band === null).length;
  const counted = ratings === RATINGS && covered.length - ratings === BANDS;
  const numbers = covered.every(({ width }) => Number.isFinite(width) && width > 0);
  return [
    ...failedCoverage(coverageRows(covered)),
    ...(counted
      ? []
      : [`${ratings} ratings and ${covered.length - ratings} bands judged, not ${RATINGS} and ${BANDS}`]),
    ...(numbers ? [] : ['an interval has no width']),
    ...(kept === null ? [] : drifted(kept, record)),
  ];
};
