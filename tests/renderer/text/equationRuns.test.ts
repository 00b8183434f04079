import { describe, expect, it } from 'vitest';
import { equationRuns } from '../../../renderer/text/equationRuns.ts';

const marked = (text: string): string =>
  equationRuns(text)
    .map((run) => (run.place === 'line' ? run.text : `${run.place === 'raised' ? '↑' : '↓'}{${run.text}}`))
    .join('');

describe('an equation in plain text', () => {
  it.each([
    ['R = −10 lg(Σ S · 10^(−R/10) / Σ S)', 'R = −10 lg(Σ S · 10↑{−R/10} / Σ S)'],
    ['W = Σ_b S · 10^(−R_b/10)', 'W = Σ↓{b} S · 10↑{−R_b/10}'],
    ['c0² / (2π) · √(m/B)', 'c0² / (2π) · √(m/B)'],
    ['x^2 + x^−1', 'x↑{2} + x↑{−1}'],
    ['10^((a+b)/10)', '10↑{(a+b)/10}'],
    ['never closed ^(a', 'never closed ^(a'],
  ])('%s', (text, shown) => {
    expect(marked(text)).toBe(shown);
  });
  it('loses no letter of what it does not raise or lower', () => {
    expect(equationRuns('plain words, 12.5 mm')).toEqual([{ text: 'plain words, 12.5 mm', place: 'line' }]);
  });
});
