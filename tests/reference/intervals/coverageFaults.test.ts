import { expect, test } from 'vitest';
import { MODEL_ERROR_RECORD } from '../../../src/engine/uncertainty/index.ts';
import type { Covered } from './coverage.ts';
import { coverageFaults } from './coverageFaults.ts';

/** As many figures as are measured, nine of ten of them held. Their real shares: npm run validate. */
const covered = Array.from({ length: 526 }, (_, i): Covered => ({
  id: String(i),
  group: 'framed walls',
  constructionClass: 'stud wall: steel, empty',
  band: i < 222 ? null : 500,
  in90: i % 10 > 0,
  in50: i % 2 > 0,
  width: 8,
}));
const faults = (figures: readonly Covered[], kept = MODEL_ERROR_RECORD): readonly string[] =>
  coverageFaults({ covered: figures, record: MODEL_ERROR_RECORD }, kept);

test('intervals that hold 90 of 100 have no fault', () => {
  expect(faults(covered)).toEqual([]);
});

test('intervals that hold too few or too many are named', () => {
  expect(faults(covered.map((it, i) => ({ ...it, in90: i % 5 > 0 })))).toContainEqual(
    expect.stringMatching(/^framed walls: the stated 90 % interval holds 79\.8 %/),
  );
  expect(faults(covered.map((it) => ({ ...it, in90: true })))[0]).toMatch(/holds 100\.0 %/);
});

test('a lost figure, and one that is not a number, are named', () => {
  expect(faults(covered.slice(1))).toEqual(['221 ratings and 304 bands judged, not 222 and 304']);
  expect(faults(covered.map((it, i) => (i === 3 ? { ...it, width: Number.NaN } : it)))).toEqual([
    'an interval has no width',
  ]);
});

test('a record that the cases no longer teach is named, class by class', () => {
  const { all, classes } = MODEL_ERROR_RECORD;
  expect(faults(covered, { all: { ...all, band: all.band + 1 }, classes })).toEqual([expect.stringMatching(/^all: /)]);
  const { glass } = classes;
  if (!glass) throw new Error('glass has no record');
  expect(faults(covered, { all, classes: { ...classes, glass: { ...glass, bands: glass.bands + 1 } } })).toEqual([
    expect.stringMatching(/^glass: /),
  ]);
});
