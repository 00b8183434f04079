import { describe, expect, it } from 'vitest';
import { readImports, type Import } from './readImports.ts';
import { breach, WINGS } from './rules.ts';
import { sourceFiles } from './sourceFiles.ts';

const imagined = (path: string, text: string): (string | null)[] => readImports({ path, text }).map(breach);

describe('who may import whom', () => {
  const folders = ['src', 'electron', 'renderer'];
  const imports: Import[] = sourceFiles(folders).flatMap(readImports);

  it('finds the wings and their imports', () => {
    expect(imports.length).toBeGreaterThan(100);
    for (const { folder } of WINGS.filter(({ folder }) => folder !== 'electron/scripts'))
      expect(imports.some(({ from }) => from.startsWith(`${folder}/`))).toBe(true);
  });

  it('is kept everywhere', () => {
    expect(imports.map(breach).filter((sentence) => sentence !== null)).toEqual([]);
  });

  it.each([
    ['a room of higher rank', 'src/engine/assembly/a.ts', `import { b } from '../shell/index.ts';`],
    ['a room of the same rank', 'src/engine/materials/a.ts', `import { b } from '../ratings/index.ts';`],
    ['a file inside another room', 'src/engine/shell/a.ts', `import { b } from '../ratings/contour.ts';`],
    ['the corridor from a room', 'src/engine/shell/a.ts', `export { b } from '../evaluate.ts';`],
    ['a package in the engine', 'src/engine/shell/a.ts', `import * as v from 'valibot';`],
    ['Node in a pure wing', 'src/service/a.ts', `const fs = await import('node:fs');`],
    ['the host from the service', 'src/service/a.ts', `import type { Host } from '../host/host.ts';`],
    ['the contract from the project', 'src/project/a.ts', `import { methods } from '../contract/methods.ts';`],
    ['the engine from the host', 'src/host/a.ts', `import { evaluate } from '../engine/evaluate.ts';`],
    ['reckoning in the window', 'renderer/a.ts', `import { predict } from '../src/engine/transmission/index.ts';`],
    ['reckoning in a component', 'renderer/A.svelte', `<script>import { b } from '../src/engine/evaluate.ts'</script>`],
    ['the store from the window', 'renderer/a.ts', `import type { S } from '../src/host/sqlite/rows.ts';`],
    ['code in the preload script', 'electron/preload.ts', `import { createClient } from '../src/contract/client.ts';`],
    ['the store from the shell', 'electron/a.ts', `import { b } from '../src/host/sqlite/rows.ts';`],
    ['a worker address into the host', 'renderer/a.ts', `new Worker(new URL('../src/host/a.ts', import.meta.url));`],
  ])('notices %s', (_what, path, text) => {
    expect(imagined(path, text)).toEqual([expect.stringContaining(`${path} may not import`)]);
  });

  it('lets through what the rules allow', () => {
    expect(imagined('src/engine/shell/a.ts', `import { b } from '../ratings/index.ts'; import './c.ts';`)).toEqual([
      null,
      null,
    ]);
    expect(imagined('renderer/a.ts', `import type { P } from '../src/engine/transmission/index.ts';`)).toEqual([null]);
    expect(imagined('src/engine/evaluate.ts', `import { b } from './plan/index.ts';`)).toEqual([null]);
  });
});
