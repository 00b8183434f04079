import { describe, expect, it } from 'vitest';
import { errorBands } from '../../../renderer/drawings/errorBands.ts';
import { errorClasses, errorHistogram } from '../../../renderer/drawings/errorHistogram.ts';
import { scatter } from '../../../renderer/drawings/scatter.ts';
import { svgText } from '../../support/svgText.ts';

describe('predicted against measured', () => {
  const drawing = scatter(
    [
      { measured: 40, predicted: 40 },
      { measured: 40, predicted: 46.5 },
      { measured: 63, predicted: 60 },
    ],
    300,
  );
  const [diagonal] = drawing.shapes.filter((it) => it.kind === 'line' && it.tone === 'ink');
  it('puts agreement on the diagonal, as far across as up', () => {
    const [agreed] = drawing.shapes.filter((it) => it.kind === 'dot');
    if (diagonal?.kind !== 'line' || agreed?.kind !== 'dot') throw new Error('nothing drawn');
    const [x, y] = agreed.at;
    const across = (x - diagonal.from[0]) / (diagonal.to[0] - diagonal.from[0]);
    expect(across).toBeCloseTo((y - diagonal.from[1]) / (diagonal.to[1] - diagonal.from[1]), 9);
    expect(diagonal.to[0] - diagonal.from[0]).toBeCloseTo(diagonal.from[1] - diagonal.to[1], 9);
  });
  it('crosses out what is more than 6 dB off', () => {
    expect(drawing.shapes.filter((it) => it.kind === 'cross')).toHaveLength(1);
    expect(drawing.shapes.filter((it) => it.kind === 'dot')).toHaveLength(2);
  });
});

describe('errors by whole decibels', () => {
  it('count every error once, the same way out to both sides', () => {
    const errors = [-7.2, -0.4, 0.4, 0.6, 1.2, 9.9];
    const classes = errorClasses(errors);
    expect(classes.reduce((sum, { count }) => sum + count, 0)).toBe(errors.length);
    expect(classes[0]?.error).toBe(-(classes.at(-1)?.error ?? 0));
    expect(classes.find(({ error }) => error === 0)?.count).toBe(2);
    expect(classes.find(({ error }) => error === 1)?.count).toBe(2);
  });
  it('are drawn with bars as tall as their count', () => {
    const bars = errorHistogram([0, 0, 0, 0, 2, 2], 300, 200).shapes.filter((it) => it.kind === 'box');
    expect(bars.map((bar) => Math.round(bar.height))).toEqual([150, 75]);
  });
});

describe('errors by octave', () => {
  it('leave a band without figures empty and say so', () => {
    const { shapes } = errorBands(
      [
        { band: 63, count: 0, bias: 0, deviation: 0 },
        { band: 125, count: 8, bias: 1, deviation: 3 },
      ],
      300,
      200,
    );
    expect(shapes.filter((it) => it.kind === 'dot')).toHaveLength(1);
    expect(shapes.some((it) => it.kind === 'text' && it.text === '0' && it.tone === 'limit')).toBe(true);
  });
});

describe('a drawing as a file', () => {
  it('is well-formed SVG with its words escaped', () => {
    const text = svgText(scatter([{ measured: 30, predicted: 33 }], 200), 'Walls < 60 dB & more');
    const read = new DOMParser().parseFromString(text, 'image/svg+xml');
    expect(read.querySelector('title')?.textContent).toBe('Walls < 60 dB & more');
    expect(read.querySelectorAll('circle')).toHaveLength(1);
    expect(text).not.toContain('NaN');
  });
});
