import { describe, expect, it } from 'vitest';
import type { Doubt } from '../../../src/engine/uncertainty/index.ts';
import {
  chancePercent,
  chanceWords,
  middleRangeOf,
  rangeOf,
  targetName,
} from '../../../renderer/text/intervalWords.ts';
import { doubtRows } from '../../../renderer/views/doubt/doubtRows.ts';
import { withIntervals } from '../../../renderer/views/doubt/intervalRows.ts';
import { figureRows } from '../../../renderer/views/makeUp/comparison.ts';

const doubt = (kind: Doubt['kind'], of: string, Rw: number, bass: number, STC = Rw): Doubt => ({
  kind,
  of,
  figures: { Rw, Rw_plus_C50_5000: Rw, STC, bass },
  R: [bass, Rw],
});

describe('sources of doubt', () => {
  const doubts = [
    doubt('density', 'Brick', 0.3, 0.6, 2),
    doubt('stiffness', 'Plasterboard, dense', 1.2, 0.2),
    doubt('joints', '', 0.05, 0.01),
  ];

  it('are ranked by what they do to the figure, in words that say what to do', () => {
    const { rows, others, together } = doubtRows(doubts, 'Rw');
    expect(rows.map((row) => row.name)).toEqual(['stiffness of plasterboard, dense', 'weight of brick']);
    expect(rows[0]?.advice).toContain('ask the merchant');
    expect(others).toBe(1);
    expect(together).toBeCloseTo(Math.hypot(0.3, 1.2, 0.05), 9);
    expect(rows[0]?.share).toBeGreaterThan(0.9);
  });

  it('are ranked anew for STC, for the bass and for a single band', () => {
    expect(doubtRows(doubts, 'STC').rows[0]?.name).toBe('weight of brick');
    expect(doubtRows(doubts, 'bass').rows[0]?.name).toBe('weight of brick');
    expect(doubtRows(doubts, 1).rows[0]?.name).toBe('stiffness of plasterboard, dense');
  });
});

describe('intervals in words', () => {
  const interval = { p5: 33.9, p25: 35.2, p50: 36, p75: 36.8, p95: 38.6 };

  it('cut Rw to whole decibels and round the bass figure', () => {
    expect(rangeOf('Rw', interval)).toBe('33–38');
    expect(rangeOf('bass', interval)).toBe('34–39');
    expect(middleRangeOf('Rw', interval)).toBe('35–36');
  });

  it('never call a chance certain', () => {
    expect([0, 0.004, 0.5, 0.996, 1].map(chancePercent)).toEqual([
      'under 1 %',
      'under 1 %',
      '50 %',
      'over 99 %',
      'over 99 %',
    ]);
    expect([0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 0.97].map(chanceWords)).toEqual([
      'hardly',
      'unlikely',
      'rather unlikely',
      'an even chance',
      'more likely than not',
      'likely',
      'almost sure',
    ]);
  });

  it('say a target as it is asked for', () => {
    expect(targetName({ rating: 'Rw_plus_C50_5000', value_dB: 50 })).toBe('Rw + C 50–5000 50 dB');
  });

  it('stand under Rw and the bass figure of every column, empty until something is drawn', () => {
    const facts = { prediction: null, price: null, illustrative: false };
    const plain = figureRows([facts, facts], '£');
    const rows = withIntervals(plain, [null, null]);
    expect(rows).toHaveLength(plain.length + 2);
    expect(
      rows.filter((row) => row.label.startsWith('90 of 100')).map((row) => row.cells.map(({ text }) => text)),
    ).toEqual([
      ['–', '–'],
      ['–', '–'],
    ]);
  });
});
