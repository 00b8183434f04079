import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { accuracyTable } from '../support/accuracyTable.ts';
import { methodsTable } from '../support/methodsTable.ts';
import { section } from '../support/section.ts';
import { root } from './sourceFiles.ts';

const read = (file: string): string => readFileSync(join(root, file), 'utf8');
const manifest = JSON.parse(read('package.json')) as {
  scripts: Record<string, string>;
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
};

describe('documents', () => {
  it('list every method of the contract (npm run docs renews the table)', () => {
    expect(section(read('DEVELOPERS.md'), 'methods')).toBe(methodsTable());
  });

  it('show the accuracy as it is now (npm run docs renews the table)', () => {
    expect(section(read('README.md'), 'accuracy')).toBe(accuracyTable());
  });

  it('name commands that exist', () => {
    const text = `${read('README.md')}\n${read('DEVELOPERS.md')}`;
    const named = new Set([...text.matchAll(/npm run (?:-s )?([a-z]+)/g)].map((match) => match[1] ?? ''));
    expect([...named].filter((name) => !(name in manifest.scripts))).toEqual([]);
    expect(named.size).toBeGreaterThan(3);
  });

  it('name files that exist', () => {
    const paths = [...read('DEVELOPERS.md').matchAll(/`((?:src|tests|electron|assets|renderer)\/[\w./-]+)`/g)];
    expect(paths.length).toBeGreaterThan(10);
    expect(paths.map((match) => match[1] ?? '').filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it('belong to exact versions', () => {
    const versions = Object.values({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });
});
