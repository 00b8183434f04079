import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { projectRoot } from './fingerprint.ts';

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly description: string;
  readonly license: string;
  readonly main: string;
  readonly dependencies: Readonly<Record<string, string>>;
}

export const readManifest = (): Manifest =>
  JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8')) as Manifest;

const STORE = join('node_modules', 'better-sqlite3');

/** Of the store's native parts, those for this system. */
const isForHere = (file: string): boolean => !file.endsWith('.node') || basename(file).startsWith(process.platform);

/** Lays out what a packaged app consists of and nothing else: the bundles, the page, and the store's native part. */
export const stageApp = (folder: string): void => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const { name, version, description, license, main, dependencies } = readManifest();
  const store = { 'better-sqlite3': dependencies['better-sqlite3'] };
  const manifest = { name, version, description, license, main, type: 'module', dependencies: store };
  writeFileSync(join(folder, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
  cpSync(join(projectRoot, 'LICENSE'), join(folder, 'LICENSE'));
  for (const part of ['main', 'renderer'])
    cpSync(join(projectRoot, 'dist', part), join(folder, 'dist', part), { recursive: true });
  for (const part of ['package.json', 'LICENSE', 'lib', 'prebuilds'])
    cpSync(join(projectRoot, STORE, part), join(folder, STORE, part), { recursive: true, filter: isForHere });
};
