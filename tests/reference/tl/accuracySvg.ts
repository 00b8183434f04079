import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { errorBands } from '../../../renderer/drawings/errorBands.ts';
import { errorHistogram } from '../../../renderer/drawings/errorHistogram.ts';
import { scatter } from '../../../renderer/drawings/scatter.ts';
import type { Drawing } from '../../../renderer/drawings/shapes.ts';
import { svgText } from '../../support/svgText.ts';
import { bandErrors, COUNTED, statistics, type ErrorEntry } from './errorRecord.ts';

const OCTAVES = [63, ...COUNTED, 8000];

/** The drawings of a record by the name of their file: scatter, histogram, errors by octave. */
export const accuracySvg = (record: readonly ErrorEntry[]): Readonly<Record<string, string>> => {
  const ratings = record.filter(({ band }) => band === null);
  const bands = record.filter(({ band }) => band !== null && COUNTED.includes(band));
  const compared = (list: readonly ErrorEntry[]) =>
    list.map(({ measured, error }) => ({ measured, predicted: measured + error }));
  const errors = (list: readonly ErrorEntry[]) => list.map(({ error }) => error);
  const byOctave = OCTAVES.map((band) => {
    const list = bandErrors(record, undefined, band);
    const { count, bias, deviation } = statistics(list);
    return count === 0 ? { band, count, bias: 0, deviation: 0 } : { band, count, bias, deviation };
  });
  const drawn: Readonly<Record<string, readonly [Drawing, string]>> = {
    'scatter-ratings.svg': [scatter(compared(ratings), 520), 'Ratings, predicted against measured'],
    'scatter-bands.svg': [scatter(compared(bands), 520), 'Octave bands 125 Hz to 4 kHz, predicted against measured'],
    'histogram-ratings.svg': [errorHistogram(errors(ratings), 640, 360), 'Errors of the ratings'],
    'histogram-bands.svg': [errorHistogram(errors(bands), 640, 360), 'Errors of the octave bands 125 Hz to 4 kHz'],
    'octaves.svg': [errorBands(byOctave, 640, 360), 'Mean error and spread by octave'],
  };
  return Object.fromEntries(Object.entries(drawn).map(([name, [drawing, title]]) => [name, svgText(drawing, title)]));
};

/** Writes the drawings into a folder, which is made where it is not there. @returns names of the files */
export const writeAccuracySvg = (record: readonly ErrorEntry[], folder: string): readonly string[] => {
  mkdirSync(folder, { recursive: true });
  const files = accuracySvg(record);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return Object.keys(files);
};
