import { describe, expect, it } from 'vitest';
import { bassWords, ratingWords } from '../../../renderer/text/ratingWords.ts';
import { sharePercent, shareWords } from '../../../renderer/text/shareWords.ts';
import { showGain, showMoment, showMoney } from '../../../renderer/text/showFigures.ts';
import { showQuantity } from '../../../renderer/text/showNumber.ts';
import { windowTitle } from '../../../renderer/text/windowTitle.ts';

describe('figures in words', () => {
  it('reads a rating as a neighbour would, better with every step', () => {
    expect(ratingWords(54)).toBe('loud speech is not heard');
    expect(ratingWords(28)).toBe('normal speech is understood');
    expect(new Set([10, 25, 32, 37, 42, 47, 52, 57, 65].map(ratingWords)).size).toBe(9);
    expect(bassWords(20)).toContain('clear next door');
  });
  it('names usual shares by their nearest fraction', () => {
    const words = [0.1, 0.2, 0.25, 1 / 3, 0.5, 2 / 3, 0.75].map(shareWords);
    expect(words).toEqual(['a tenth', 'a fifth', 'a quarter', 'a third', 'half', 'two thirds', 'three quarters']);
  });
  it('never calls a small share nothing', () => {
    expect(sharePercent(0.001)).toBe('< 1 %');
    expect(sharePercent(0)).toBe('0 %');
  });
  it('shows a gain with its sign', () => {
    expect([3.4, 0.2, -2].map((gain) => showGain(gain))).toEqual(['+3', '±0', '\u22122']);
  });
  it('shows money in whole units, and says where there is no price', () => {
    expect(showMoney(12345.6, '£')).toBe('£ 12\u202f346');
    expect(showMoney(null, '£')).toBe('no price');
  });
  it('shows lengths in the chosen units', () => {
    expect(showQuantity(5.2, 'm')).toBe('5.2 m');
    expect(showQuantity(5.2, 'm', 'imperial')).toBe('17 ft 0.7 in');
    expect(showQuantity(12.5, 'mm', 'imperial')).toBe('0.492 in');
  });
  it('rounds inches up into the next foot, never to 12 in', () => {
    expect(showQuantity(0.3047, 'm', 'imperial')).toBe('1 ft');
  });
});

describe('the title of the window', () => {
  const saved = { project: 'Shed', savedAt: '2026-03-02T14:03:00', waiting: 0, refused: false };
  it('says when the project was saved, with the day when that is not today', () => {
    expect(windowTitle(saved, new Date('2026-03-02T18:00:00'))).toBe('Shed · Saved 14:03 · Lullwright');
    expect(windowTitle(saved, new Date('2026-03-03T18:00:00'))).toContain('2 Mar 2026, 14:03');
    expect(showMoment(new Date('2026-03-02T14:03:00'), new Date('2026-03-02T18:00:00'))).toBe('14:03');
  });
  it('says so while it is not', () => {
    expect(windowTitle({ ...saved, waiting: 2 })).toContain('Saving');
    expect(windowTitle({ ...saved, waiting: 2, refused: true })).toContain('Not saved');
  });
});
