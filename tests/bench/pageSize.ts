import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { projectRoot } from '../../electron/scripts/fingerprint.ts';

const folder = join(projectRoot, 'dist', 'renderer', 'assets');

/** Scripts and styles of the built page, kB as stored and as compressed; typefaces not counted. */
export const pageSize = () => {
  const files = readdirSync(folder)
    .filter((name) => /\.(js|css)$/.test(name))
    .map((name) => readFileSync(join(folder, name)));
  const kB = (bytes: number[]): number => bytes.reduce((sum, it) => sum + it, 0) / 1000;
  return {
    bundle_kB: kB(files.map((file) => file.length)),
    bundle_gzip_kB: kB(files.map((file) => gzipSync(file).length)),
  };
};
