import { CLOSE } from './scatter.ts';
import { written, type Drawing, type Shape } from './shapes.ts';

/** Width of a class of errors, dB. */
export const BIN = 1;
const MARGIN = { left: 34, right: 10, top: 12, bottom: 38 };

export interface ErrorClass {
  /** middle of the class, dB */
  readonly error: number;
  readonly count: number;
}

/** How many errors fall to each whole decibel, without gaps, the same to both sides. */
export const errorClasses = (errors: readonly number[]): readonly ErrorClass[] => {
  const classOf = (error: number): number => Math.round(error / BIN);
  const reach = Math.max(6, ...errors.map((error) => Math.abs(classOf(error))));
  return Array.from({ length: 2 * reach + 1 }, (_, i) => {
    const place = i - reach;
    return { error: place * BIN, count: errors.filter((error) => classOf(error) === place).length };
  });
};

const step = (most: number): number => [1, 2, 5, 10, 20, 50].find((size) => most / size <= 5) ?? 100;

/** Errors (predicted less measured) by whole decibels; those of more than 6 dB in the accent. */
export const errorHistogram = (errors: readonly number[], width: number, height: number): Drawing => {
  const classes = errorClasses(errors);
  const [across, down] = [width - MARGIN.left - MARGIN.right, height - MARGIN.top - MARGIN.bottom];
  const most = Math.max(1, ...classes.map(({ count }) => count));
  const bar = across / classes.length;
  const foot = MARGIN.top + down;
  const y = (count: number): number => foot - (count / most) * down;
  const x = (error: number): number => MARGIN.left + (error / BIN + (classes.length - 1) / 2 + 0.5) * bar;
  const every = step(most);
  const counts = Array.from({ length: Math.floor(most / every) + 1 }, (_, i) => i * every);
  const bars = classes.flatMap(({ error, count }): Shape[] =>
    count === 0
      ? []
      : [
          {
            kind: 'box',
            at: [x(error) - bar / 2 + 0.5, y(count)],
            width: Math.max(1, bar - 1),
            height: foot - y(count),
            tone: Math.abs(error) > 2 * CLOSE ? 'limit' : Math.abs(error) > CLOSE ? 'line' : 'soft',
          },
        ],
  );
  return {
    width,
    height,
    shapes: [
      ...counts.flatMap((count): Shape[] => [
        { kind: 'line', from: [MARGIN.left, y(count)], to: [width - MARGIN.right, y(count)], tone: 'faint' },
        written(String(count), [MARGIN.left - 6, y(count) + 4], 'end'),
      ]),
      ...bars,
      { kind: 'line', from: [x(0), MARGIN.top], to: [x(0), foot], tone: 'ink', dash: '2 3' },
      ...classes
        .filter(({ error }) => error % CLOSE === 0)
        .map(({ error }) =>
          written(error > 0 ? `+${error}` : String(error).replace('-', '\u2212'), [x(error), foot + 15]),
        ),
      written('predicted less measured, dB', [MARGIN.left + across / 2, height - 6]),
    ],
  };
};
