import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { accuracyTable } from './accuracyTable.ts';
import { methodsTable } from './methodsTable.ts';
import { withSection } from './section.ts';

const renew = (name: string, mark: string, content: string): void => {
  const file = fileURLToPath(new URL(`../../${name}`, import.meta.url));
  writeFileSync(file, withSection(readFileSync(file, 'utf8'), mark, content));
};

renew('DEVELOPERS.md', 'methods', methodsTable());
renew('README.md', 'accuracy', accuracyTable());
console.log('The tables in DEVELOPERS.md and README.md are up to date.');
