import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { createPredictor } from '../../../src/engine/transmission/index.ts';
import { accuracySvg } from './accuracySvg.ts';
import { errorRecord } from './errorRecord.ts';
import { evidenceText } from './evidence.ts';

const record = errorRecord(createPredictor());

test('the record that the program shows is the present one (npm run docs renews it)', () => {
  const shown = readFileSync(new URL('../../../assets/accuracy/record.json', import.meta.url), 'utf8');
  expect(shown).toBe(evidenceText(record));
});

test('every construction belongs to a class that the program knows', () => {
  const { rows } = JSON.parse(evidenceText(record)) as { rows: [number, ...unknown[]][] };
  expect(rows.every(([kind]) => kind >= 0)).toBe(true);
});

test('the record is drawn with every figure in it', () => {
  const drawn = accuracySvg(record);
  const figures = (svg: string | undefined): number =>
    (svg?.match(/<circle/g)?.length ?? 0) + (svg?.match(/stroke="#a8330d" fill="none"/g)?.length ?? 0);
  expect(figures(drawn['scatter-ratings.svg'])).toBe(record.filter(({ band }) => band === null).length);
  expect(drawn['histogram-bands.svg']).toContain('<rect');
  expect(Object.values(drawn).every((svg) => !svg.includes('NaN'))).toBe(true);
});
