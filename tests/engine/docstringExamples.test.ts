import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { structureOf } from '../../src/engine/assembly/index.ts';
import { THIRD_OCTAVES } from '../../src/engine/quantities/index.ts';
import { BLOCK, GLASS, GYPSUM, cavity, frame, layup, sheet } from '../support/layups.ts';

/** Every `@example expression // value` of the engine is worked out: a docstring that went stale fails here. */

const engine = new URL('../../src/engine/', import.meta.url);

interface Example {
  readonly file: string;
  readonly expression: string;
  readonly shown: string;
}

const examplesOf = (file: string): Example[] =>
  [...readFileSync(new URL(file, engine), 'utf8').matchAll(/^ \* @example (.+?) \/\/ (.+)$/gm)].map((found) => ({
    file,
    expression: found[1] ?? '',
    shown: found[2] ?? '',
  }));

/** The value that a comment shows at its start, with half a unit in its last place; null when it shows words. */
const shownNumber = (shown: string): { readonly value: number; readonly slack: number } | null => {
  const found = /^(about |±|\[)?(-?\d+)(?:\.(\d+))?(?:e(-?\d+))?…?(?![\w-])/.exec(shown.replace('−', '-'));
  if (!found || found[1] === '±' || found[1] === '[') return null;
  const power = 10 ** Number(found[4] ?? 0);
  const value = Number(`${found[2] ?? ''}.${found[3] ?? '0'}`) * power;
  const last = 10 ** -(found[3] ?? '').length * power;
  if (found[1] === 'about ') return { value, slack: 0.06 * Math.abs(value) };
  return { value, slack: (shown.includes('…') ? 1.01 : 0.51) * last };
};

/** Things that examples speak of without making them. */
const props = {
  THIRD_OCTAVES,
  structureOf,
  gypsum: GYPSUM,
  glass: { ...GLASS, youngsModulus: 70e9, poissonRatio: 0.23 },
  block: BLOCK,
  singleBoard: layup(sheet({ ...GYPSUM, density: 720 }, 12.5)),
  wall: layup(sheet(GYPSUM, 12.5), cavity(90, 90, frame()), sheet(GYPSUM, 12.5)),
  studWall: layup(sheet(GYPSUM, 12.5), cavity(90, 90, frame()), sheet(GYPSUM, 12.5)),
  tripleWall: layup(sheet(GYPSUM, 12.5), cavity(50), sheet(GYPSUM, 12.5), cavity(50), sheet(GYPSUM, 12.5)),
  airLayer: { kind: 'air', depth: 0.1, flowLoss: 0 },
};

const examples = globSync('**/*.ts', { cwd: fileURLToPath(engine) })
  .sort()
  .flatMap((file) => examplesOf(file))
  .flatMap((example) => {
    const shown = shownNumber(example.shown);
    return shown ? [{ ...example, ...shown }] : [];
  });

/** The value of an expression; null when it speaks of things that are not at hand. */
const valueOf = async (it: Example): Promise<unknown> => {
  const exported = (await import(new URL(it.file, engine).href)) as Readonly<Record<string, unknown>>;
  try {
    return runInNewContext(it.expression, { ...props, ...exported });
  } catch (error) {
    // an error of the other realm is no Error here
    if (String(error).startsWith('ReferenceError')) return null;
    throw error;
  }
};

describe('examples in docstrings', () => {
  test.each(examples.map((it) => [`${it.file}: ${it.expression}`, it] as const))('%s', async (_, it) => {
    const result = await valueOf(it);
    if (result === null) return;
    expect(typeof result).toBe('number');
    expect(Math.abs(Number(result) - it.value)).toBeLessThanOrEqual(it.slack);
  });

  test('are nearly all worked out, and many', async () => {
    const values = await Promise.all(examples.map(valueOf));
    expect(values.filter((value) => value !== null).length).toBeGreaterThanOrEqual(60);
    expect(values.filter((value) => value === null).length).toBeLessThanOrEqual(6);
  });
});
