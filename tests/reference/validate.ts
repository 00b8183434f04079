import { writeFileSync } from 'node:fs';
import { createPredictor } from '../../src/engine/transmission/index.ts';
import { reportCoverage } from './intervals/reportCoverage.ts';
import { reportBoxes } from './linedBox/validate.ts';
import { accuracySource } from './tl/accuracySource.ts';
import { writeAccuracySvg } from './tl/accuracySvg.ts';
import { evidenceText } from './tl/evidence.ts';
import { GROUPS, bandErrors, errorRecord, ratingErrors, statistics } from './tl/errorRecord.ts';
import type { ErrorEntry } from './tl/errorRecord.ts';
import { failedGates, gatesOf } from './tl/gates.ts';
import { measuredCases } from './tl/measuredCases.ts';
import { secondRecord } from './tl/secondRecord.ts';
import { rightSize, trendRecord } from './tl/trendRecord.ts';

/**
 * Predicts every measured construction and prints how far off. `--record` also writes the engine's table of errors and
 * the record that the program shows, `--svg DIR` the drawings of it.
 */

const row = (name: string, errors: readonly number[]): string => {
  if (errors.length === 0) return '';
  const { count, bias, deviation, meanAbsolute, worst } = statistics(errors);
  const figures = [bias, deviation, meanAbsolute].map((it) => it.toFixed(2).padStart(8)).join('');
  return `${name.padEnd(40)}${String(count).padStart(6)}${figures}${worst.toFixed(1).padStart(8)}`;
};

const table = (title: string, rows: readonly string[]): void => {
  console.log(`\n${title.padEnd(40)}${'number    bias      sd     |e|   worst'.padStart(46)}`);
  for (const it of rows) if (it !== '') console.log(it);
};

const classes = (record: readonly ErrorEntry[]): string[] => [...new Set(record.map((it) => it.class))].sort();

const print = (record: readonly ErrorEntry[]): void => {
  table('Ratings (predicted − measured, dB)', [
    row('all', ratingErrors(record)),
    ...GROUPS.map((group) => row(group, ratingErrors(record, group))),
    ...classes(record).map((kind) =>
      row(
        `  ${kind}`,
        record.filter((it) => it.class === kind && it.band === null).map((it) => it.error),
      ),
    ),
  ]);
  table('Octave bands 125 Hz to 4 kHz (dB)', [
    row('all', bandErrors(record)),
    ...GROUPS.map((group) => row(group, bandErrors(record, group))),
  ]);
  table('By octave, all classes (dB)', [
    ...[63, 125, 250, 500, 1000, 2000, 4000, 8000].map((band) =>
      row(`${band} Hz`, bandErrors(record, undefined, band)),
    ),
  ]);
  for (const group of GROUPS)
    table(`By octave: ${group}`, [
      ...[63, 125, 250, 500, 1000, 2000, 4000, 8000].map((band) => row(`${band} Hz`, bandErrors(record, group, band))),
    ]);
  console.log(`\n${'Changes of one thing: mean step of the rating, dB'.padEnd(52)} pairs  published  predicted`);
  for (const it of trendRecord(record)) {
    const steps = [it.published, it.predicted].map((step) => step.toFixed(1).padStart(11)).join('');
    console.log(`${it.change.padEnd(52)}${String(it.pairs).padStart(6)}${steps}${rightSize(it) ? '' : '  size'}`);
  }
  console.log(`\n${'Second method (predicted − measured, dB)'.padEnd(52)}number    bias      sd`);
  for (const { of, figures, count, bias, deviation } of secondRecord(measuredCases()))
    console.log(
      `${`${of}: ${figures}`.padEnd(52)}${String(count).padStart(6)}${bias.toFixed(1).padStart(8)}${deviation.toFixed(1).padStart(8)}`,
    );
  const worst = [...record].sort((a, b) => Math.abs(b.error) - Math.abs(a.error)).slice(0, 12);
  console.log('\nWorst');
  for (const it of worst)
    console.log(`${it.error.toFixed(1).padStart(7)}  ${it.band === null ? 'rating' : `${it.band} Hz`}  ${it.name}`);
};

const record = errorRecord(createPredictor());
print(record);
if (process.argv.includes('--record')) {
  const file = new URL('../../src/engine/transmission/accuracyRecord.ts', import.meta.url);
  writeFileSync(file, accuracySource(record));
  writeFileSync(new URL('../../assets/accuracy/record.json', import.meta.url), evidenceText(record));
  console.log('\nwritten: src/engine/transmission/accuracyRecord.ts, assets/accuracy/record.json');
}
const svg = process.argv.indexOf('--svg');
if (svg >= 0) {
  const folder = process.argv[svg + 1];
  if (folder === undefined || folder.startsWith('--'))
    throw new Error('--svg needs a folder to write the drawings into, as in: npm run validate -- --svg drawings');
  console.log(`\nwritten into ${folder}: ${writeAccuracySvg(record, folder).join(', ')}`);
}
const failed = [
  ...failedGates(gatesOf(record)),
  ...reportCoverage(process.argv.includes('--record')),
  ...reportBoxes(false),
];
console.log(failed.length === 0 ? '\nvalidate: all gates hold' : `\nvalidate: ${failed.length} failed`);
for (const it of failed) console.log(`  ${it}`);
process.exitCode = failed.length === 0 ? 0 : 1;
