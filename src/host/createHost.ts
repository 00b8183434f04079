import { join } from 'node:path';
import manifest from '../../package.json' with { type: 'json' };
import { examples } from '../project/examples.ts';
import { createService } from '../service/service.ts';
import type { Host } from './host.ts';
import { readPage } from './pages/index.ts';
import { createSqliteStore } from './sqlite/createSqliteStore.ts';

export type { Host };

export interface HostPlaces {
  /** folder in which projects are kept */
  readonly folder: string;
  /** folder of the built page */
  readonly pages: string;
  /** what the app runs in, for its "about" line */
  readonly runtime: string;
}

export const STORE_FILE = 'lullwright.sqlite';

/** Store, service and page put together: what Electron and the loopback host have in common. */
export const createHost = ({ folder, pages, runtime }: HostPlaces): Host => {
  const file = join(folder, STORE_FILE);
  const store = createSqliteStore(file);
  const answer = createService({
    about: { version: manifest.version, store: file, runtime },
    store,
    examples,
    onFault: console.error,
  });
  return { answer, readPage: (pathname) => readPage(pages, pathname), close: store.close };
};
