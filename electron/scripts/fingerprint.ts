import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectRoot = fileURLToPath(new URL('../..', import.meta.url));

const SOURCES = ['src', 'renderer', 'electron', 'assets', 'package-lock.json', 'vite.config.ts', 'svelte.config.js'];
const record = join(projectRoot, 'dist', 'built-from');

const files = (path: string): string[] => {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path).flatMap((name) => files(join(path, name)));
};

/** Names, sizes and times of all sources in one hash: cheap enough to take at every start. */
export const fingerprint = (): string => {
  const hash = createHash('sha256');
  const all = SOURCES.flatMap((source) => files(join(projectRoot, source))).sort();
  for (const file of all) {
    const { size, mtimeMs } = statSync(file);
    hash.update(`${relative(projectRoot, file)}\0${size}\0${mtimeMs}\n`);
  }
  return hash.digest('hex');
};

export const rememberBuild = (sources: string): void => {
  mkdirSync(join(projectRoot, 'dist'), { recursive: true });
  writeFileSync(record, sources);
};

/** Whether dist/ was built from the sources as they are now. */
export const isFresh = (): boolean => existsSync(record) && readFileSync(record, 'utf8') === fingerprint();
