/** How up to four layups are told apart: colour, dash and label together. */
export interface SeriesStroke {
  readonly colour: string;
  readonly dash: string;
  readonly width: number;
}

const STROKES: readonly SeriesStroke[] = [
  { colour: 'var(--layup-1)', dash: 'none', width: 2.2 },
  { colour: 'var(--layup-2)', dash: '9 3', width: 1.8 },
  { colour: 'var(--layup-3)', dash: '9 3 2 3', width: 1.8 },
  { colour: 'var(--layup-4)', dash: '4 3', width: 1.8 },
];

export const seriesStroke = (index: number): SeriesStroke =>
  STROKES[index % STROKES.length] ?? { colour: 'var(--ink)', dash: 'none', width: 1.8 };
