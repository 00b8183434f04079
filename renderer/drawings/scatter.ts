import { written, type Drawing, type Shape } from './shapes.ts';

/** One predicted figure against one measured, dB. */
export interface Compared {
  readonly measured: number;
  readonly predicted: number;
}

/** Lines this far off the diagonal show what counts as close, dB. */
export const CLOSE = 3;
const MARGIN = { left: 40, right: 10, top: 10, bottom: 38 };

/** The tens of decibels that hold every figure. */
const range = (points: readonly Compared[]): readonly [number, number] => {
  const all = points.flatMap(({ measured, predicted }) => [measured, predicted]);
  const least = Math.floor(Math.min(...all, 70) / 10) * 10;
  return [least, Math.max(least + 20, Math.ceil(Math.max(...all, 0) / 10) * 10)];
};

/** Predicted against measured: on the diagonal they agree, within the dashed lines to 3 dB. */
export const scatter = (points: readonly Compared[], size: number): Drawing => {
  const [least, most] = range(points);
  const side = size - MARGIN.left - MARGIN.right;
  const height = side + MARGIN.top + MARGIN.bottom;
  const at = (measured: number, predicted: number): readonly [number, number] => [
    MARGIN.left + ((measured - least) / (most - least)) * side,
    MARGIN.top + side - ((predicted - least) / (most - least)) * side,
  ];
  const tens = Array.from({ length: Math.round((most - least) / 10) + 1 }, (_, i) => least + 10 * i);
  const grid = tens.flatMap((level): Shape[] => [
    { kind: 'line', from: at(level, least), to: at(level, most), tone: 'faint' },
    { kind: 'line', from: at(least, level), to: at(most, level), tone: 'faint' },
    written(String(level), [at(level, least)[0], MARGIN.top + side + 15]),
    written(String(level), [MARGIN.left - 6, at(least, level)[1] + 4], 'end'),
  ]);
  const diagonal = (off: number): Shape => ({
    kind: 'line',
    from: at(least + Math.max(0, -off), least + Math.max(0, off)),
    to: at(most - Math.max(0, off), most - Math.max(0, -off)),
    tone: off === 0 ? 'ink' : 'line',
    ...(off === 0 ? {} : { dash: '5 3' }),
  });
  const dots = points.map(({ measured, predicted }): Shape => {
    const far = Math.abs(predicted - measured) > 2 * CLOSE;
    return far
      ? { kind: 'cross', at: at(measured, predicted), radius: 3, tone: 'limit' }
      : { kind: 'dot', at: at(measured, predicted), radius: 2.6, tone: 'ink', hollow: true };
  });
  return {
    width: size,
    height,
    shapes: [
      ...grid,
      ...[-CLOSE, 0, CLOSE].map(diagonal),
      ...dots,
      written('measured, dB', [MARGIN.left + side / 2, height - 6]),
      { ...written('predicted, dB', [11, MARGIN.top + side / 2]), upwards: true },
    ],
  };
};
