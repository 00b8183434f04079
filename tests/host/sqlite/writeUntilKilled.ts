import { writeSync } from 'node:fs';
import { createSqliteStore } from '../../../src/host/sqlite/createSqliteStore.ts';
import { smallProject } from './smallProject.ts';

/** Saves edit after edit and acknowledges each only once the store has; ends by being killed. */
const [file = '', id = ''] = process.argv.slice(2);
const store = createSqliteStore(file);
let { revision } = await store.open(id);
writeSync(1, `${revision}\n`);
for (;;) {
  const label = `edit ${revision + 1}`;
  const document = smallProject(`state ${revision + 1}`, 20_000);
  ({ revision } = await store.save({ id, revision, label, document }));
  writeSync(1, `${revision}\n`);
}
