import { bandErrors, ratingErrors, statistics } from './errorRecord.ts';
import type { ErrorEntry, Group } from './errorRecord.ts';
import { rightSize, rightSign, trendRecord } from './trendRecord.ts';

/** A total that must hold: raising a limit is a decision to be explained, not a repair. */
export interface Gate {
  readonly claim: string;
  readonly value: number;
  readonly limit: number;
}

const gate = (claim: string, value: number, limit: number): Gate => ({ claim, value, limit });

/** Framed walls of a class that has as many ratings as this may not be off to one side. */
const MANY = 5;

/** The largest bias among the classes of framed walls with enough ratings, dB. */
const worstClassBias = (record: readonly ErrorEntry[]): number => {
  const classes = Map.groupBy(
    record.filter((it) => it.band === null && it.group === 'framed walls'),
    (it) => it.class,
  );
  const many = [...classes.values()].filter((list) => list.length >= MANY);
  return Math.max(...many.map((list) => Math.abs(statistics(list.map((it) => it.error)).bias)));
};

const shareBeyond = (errors: readonly number[], limit: number): number =>
  errors.filter((error) => Math.abs(error) > limit).length / errors.length;

/** What the measured record must show. Counts are exact: a lost sample is a failure. */
export const gatesOf = (record: readonly ErrorEntry[]): readonly Gate[] => {
  const ratings = (group?: Group) => statistics(ratingErrors(record, group));
  const bands = (group?: Group) => statistics(bandErrors(record, group));
  const glazing = statistics([...bandErrors(record, 'glass'), ...bandErrors(record, 'double glazing')]);
  const trends = trendRecord(record);
  return [
    gate('single-number ratings compared, short of 222', 222 - ratings().count, 0),
    gate('octave bands compared, short of 270', 270 - bands().count, 0),
    gate('figures that are not numbers', record.filter((it) => !Number.isFinite(it.error)).length, 0),
    gate('all ratings: size of the bias', Math.abs(ratings().bias), 0.3),
    gate('all ratings: mean absolute error', ratings().meanAbsolute, 1.55),
    gate('framed walls, ratings: mean absolute error', ratings('framed walls').meanAbsolute, 1.5),
    gate(
      'framed walls, ratings: share that is off by more than 4 dB',
      shareBeyond(ratingErrors(record, 'framed walls'), 4),
      0.08,
    ),
    gate('framed walls, ratings: largest bias of a class of five and more', worstClassBias(record), 1),
    gate('floors, ratings: mean absolute error', ratings('floors').meanAbsolute, 1.6),
    gate('masonry with lining, ratings: mean absolute error', ratings('masonry with lining').meanAbsolute, 1),
    gate('all bands: size of the bias', Math.abs(bands().bias), 0.3),
    gate('all bands: standard deviation', bands().deviation, 3.7),
    gate('framed walls, bands: size of the bias', Math.abs(bands('framed walls').bias), 1),
    gate('framed walls, bands: standard deviation', bands('framed walls').deviation, 4),
    gate('double glazing, ratings: mean absolute error', ratings('double glazing').meanAbsolute, 1.35),
    gate('double glazing, bands: size of the bias', Math.abs(bands('double glazing').bias), 1),
    gate('double glazing, bands: standard deviation', bands('double glazing').deviation, 3.3),
    gate('glass, bands: size of the bias', Math.abs(bands('glass').bias), 0.6),
    gate('glass, bands: standard deviation', bands('glass').deviation, 2.6),
    gate('glass and double glazing, bands: standard deviation', glazing.deviation, 3),
    gate('single boards, bands: standard deviation', bands('single boards').deviation, 3),
    gate('single boards, bands: size of the bias', Math.abs(bands('single boards').bias), 0.7),
    gate('masonry, bands: standard deviation', bands('masonry').deviation, 4.1),
    gate('masonry, bands: size of the bias', Math.abs(bands('masonry').bias), 0.7),
    gate('published trends compared, short of 23', 23 - trends.length, 0),
    gate('published trends of the wrong sign', trends.filter((it) => !rightSign(it)).length, 0),
    gate(
      'published trends that come out under half or over one and a half times their size',
      trends.filter((it) => !rightSize(it)).length,
      0,
    ),
  ];
};

/** Gates that fail, in words. */
export const failedGates = (gates: readonly Gate[]): string[] =>
  gates
    .filter((it) => !(it.value <= it.limit))
    .map((it) => `${it.claim}: ${it.value.toFixed(2)} where at most ${it.limit} is allowed`);
