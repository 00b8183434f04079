import { fileURLToPath } from 'node:url';
import { dataFolder } from '../src/host/dataFolder.ts';
import { startApp } from './startApp.ts';

const built = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

await startApp({ pages: built('../renderer'), preload: built('./preload.cjs'), data: dataFolder() });
