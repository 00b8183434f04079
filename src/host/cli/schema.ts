import { mkdir, writeFile } from 'node:fs/promises';
import { jsonSchema } from '../../service/publishedSchema.ts';

/** Writes the published schema of the project document: `node src/host/cli/schema.ts`. */

const folder = new URL('../../../assets/schema/', import.meta.url);
await mkdir(folder, { recursive: true });
await writeFile(new URL('project-1.schema.json', folder), `${JSON.stringify(jsonSchema(), null, 2)}\n`);
