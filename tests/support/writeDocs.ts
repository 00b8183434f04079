import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { methodsTable } from './methodsTable.ts';
import { withSection } from './section.ts';

const file = fileURLToPath(new URL('../../DEVELOPERS.md', import.meta.url));
writeFileSync(file, withSection(readFileSync(file, 'utf8'), 'methods', methodsTable()));
console.log('The table of methods in DEVELOPERS.md is up to date.');
