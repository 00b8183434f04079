import { bandName } from './chart.ts';
import { written, type Drawing, type Shape } from './shapes.ts';

/** Mean error and spread of one band. */
export interface BandError {
  readonly band: number;
  readonly count: number;
  readonly bias: number;
  readonly deviation: number;
}

const MARGIN = { left: 34, right: 10, top: 10, bottom: 50 };
const LIMIT = 12;

/** For each octave the mean error as a dot, one standard deviation as its bar, and how many figures that rests on. */
export const errorBands = (bands: readonly BandError[], width: number, height: number): Drawing => {
  const [across, down] = [width - MARGIN.left - MARGIN.right, height - MARGIN.top - MARGIN.bottom];
  const x = (i: number): number => MARGIN.left + ((i + 0.5) / bands.length) * across;
  const y = (error: number): number =>
    MARGIN.top + ((LIMIT - Math.max(-LIMIT, Math.min(LIMIT, error))) / (2 * LIMIT)) * down;
  const levels = [-12, -9, -6, -3, 0, 3, 6, 9, 12];
  const foot = MARGIN.top + down;
  return {
    width,
    height,
    shapes: [
      ...levels.flatMap((level): Shape[] => [
        {
          kind: 'line',
          from: [MARGIN.left, y(level)],
          to: [width - MARGIN.right, y(level)],
          tone: level === 0 ? 'line' : 'faint',
        },
        written(level > 0 ? `+${level}` : String(level).replace('-', '\u2212'), [MARGIN.left - 6, y(level) + 4], 'end'),
      ]),
      ...bands.flatMap(({ band, count, bias, deviation }, i): Shape[] => [
        ...(count > 1
          ? [
              {
                kind: 'line' as const,
                from: [x(i), y(bias - deviation)] as const,
                to: [x(i), y(bias + deviation)] as const,
                tone: 'soft' as const,
                width: 6,
              },
            ]
          : []),
        ...(count > 0
          ? [{ kind: 'dot' as const, at: [x(i), y(bias)] as const, radius: 3.4, tone: 'limit' as const }]
          : []),
        written(bandName(band), [x(i), foot + 15]),
        written(`${count}`, [x(i), foot + 28], 'middle', count < 6 ? 'limit' : 'soft', 10.5),
      ]),
      written('octave, Hz; under it how many figures', [MARGIN.left + across / 2, height - 6]),
    ],
  };
};
