import { describe, expect, it } from 'vitest';
import { noteFigureText } from '../../../renderer/text/noteFigure.ts';

const shown = (value: number, unit: string) => noteFigureText({ term: 'x', value, unit });

describe('figures of a note', () => {
  it('keep two decimals below 1, one below 10, none above', () => {
    expect(shown(0.2506, 'kN/m2')).toBe('0.25 kN/m²');
    expect(shown(-3.44, 'dB')).toBe('−3.4 dB');
    expect(shown(211.7, 'Hz')).toBe('212 Hz');
  });
  it('stand alone where they are pure numbers', () => {
    expect(shown(0.5, '')).toBe('0.5');
  });
});
