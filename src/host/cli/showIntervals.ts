import type { AssemblyIntervals, ShellIntervals } from '../../contract/uncertaintyResults.ts';
import type { Result } from '../../contract/methods.ts';
import { lowBands } from './lowBands.ts';
import { showFigure, showTable } from './table.ts';

/** Sources of doubt that are printed. */
const MOST = 8;

const ROWS = [
  ['Rw, dB', 'Rw'],
  ['Rw + C 50-5000, dB', 'Rw_plus_C50_5000'],
  ['STC', 'STC'],
  ['Bass 50-100 Hz, dB', 'bass'],
] as const;

/** Intervals of the ratings, what the doubt comes from, and the chance of the target. */
const showIntervals = (drawn: AssemblyIntervals | ShellIntervals, width: number): string => {
  const { ratings, samples } = drawn;
  const most = ({ Rw_dB, STC_dB, bass_dB }: (typeof drawn.doubts)[number]): number => Math.max(Rw_dB, STC_dB, bass_dB);
  const doubts = drawn.doubts.toSorted((a, b) => most(b) - most(a)).slice(0, MOST);
  const column = (heading: string, of: 'p5' | 'p25' | 'p50' | 'p75' | 'p95') => ({
    heading,
    cells: ROWS.map(([, key]) => showFigure(ratings[key][of], 1)),
  });
  const target = 'target' in drawn ? drawn.target : null;
  return [
    `Of ${samples} builds that might come of these drawings, 5, 25, 50, 75 and 95 of 100 reach at most:`,
    '',
    showTable(
      [
        { heading: 'Rating', cells: ROWS.map(([label]) => label) },
        column('5', 'p5'),
        column('25', 'p25'),
        column('50', 'p50'),
        column('75', 'p75'),
        column('95', 'p95'),
      ],
      width,
    ),
    '',
    showTable(
      [
        { heading: 'Where the doubt comes from', cells: doubts.map(({ what }) => what) },
        { heading: 'Rw, ±dB', cells: doubts.map(({ Rw_dB }) => showFigure(Rw_dB, 1)) },
        { heading: 'STC, ±', cells: doubts.map(({ STC_dB }) => showFigure(STC_dB, 1)) },
        { heading: 'bass, ±dB', cells: doubts.map(({ bass_dB }) => showFigure(bass_dB, 1)) },
      ],
      width,
    ),
    ...lowBands(drawn.beyond).flatMap((line) => ['', line]),
    ...(target
      ? ['', `Chance that the room meets ${target.rating} ${target.value_dB} dB: ${showFigure(100 * target.chance)} %.`]
      : []),
  ].join('\n');
};

/** Intervals of the room under its table; nothing where nothing was drawn. */
export const drawnIntervals = (drawn: Result<'shell'>['intervals'], width: number): string =>
  drawn ? `\n\n${showIntervals(drawn, width)}` : '';

/** Intervals of each make-up under the table; nothing where nothing was drawn. */
export const predictedIntervals = ({ assemblies }: Result<'predict'>, width: number): string =>
  Object.entries(assemblies)
    .flatMap(([id, { intervals }]) => (intervals ? [`\n\n${id}\n${showIntervals(intervals, width)}`] : []))
    .join('');
