import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createPredictor } from '../../src/engine/transmission/index.ts';
import { errorRecord } from '../reference/tl/errorRecord.ts';
import { evidenceText } from '../reference/tl/evidence.ts';
import { accuracyTable } from './accuracyTable.ts';
import { methodsTable } from './methodsTable.ts';
import { withSection } from './section.ts';

const renew = (name: string, mark: string, content: string): void => {
  const file = fileURLToPath(new URL(`../../${name}`, import.meta.url));
  writeFileSync(file, withSection(readFileSync(file, 'utf8'), mark, content));
};

renew('DEVELOPERS.md', 'methods', methodsTable());
renew('README.md', 'accuracy', accuracyTable());
writeFileSync(
  new URL('../../assets/accuracy/record.json', import.meta.url),
  evidenceText(errorRecord(createPredictor())),
);
console.log('The tables in DEVELOPERS.md and README.md and the record that the program shows are up to date.');
