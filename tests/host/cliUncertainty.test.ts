import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/host/cli/run.ts';
import document from '../support/exampleDocument.json' with { type: 'json' };

const file = join(mkdtempSync(join(tmpdir(), 'lullwright-')), 'project.json');
writeFileSync(file, JSON.stringify({ ...document, target: { rating: 'Rw', value_dB: 30 } }));
const cli = (...words: string[]) => run(words, 100, '0');
const json = async (...words: string[]): Promise<Record<string, unknown>> =>
  JSON.parse((await cli(...words, '--json')).out) as Record<string, unknown>;

describe('the command line with --uncertainty', () => {
  it('adds intervals to the whole and changes nothing else', async () => {
    const plain = await json('shell', file);
    const { intervals, ...others } = await json('shell', file, '--uncertainty', '--samples', '200');
    expect(others).toEqual(plain);
    expect(intervals).toMatchObject({ samples: 200, start: 1, target: { rating: 'Rw', value_dB: 30 } });
  });

  it('adds intervals to every make-up', async () => {
    const { assemblies } = await json('predict', file, '--uncertainty', '--samples=100', '--seed=9');
    const all = Object.values(assemblies as Record<string, { intervals?: { start: number } }>);
    expect(all.length).toBeGreaterThan(1);
    expect(all.every(({ intervals }) => intervals?.start === 9)).toBe(true);
  });

  it('says of each make-up, and of the whole, what stands behind the bands below 100 Hz', async () => {
    const { out } = await cli('predict', file, '--uncertainty', '--samples', '100');
    const made = Object.keys(document.assemblies);
    expect(out.match(/^50 to 80 Hz: .*(at hand at 63 Hz|theory alone)/gm)).toHaveLength(made.length);
    expect((await cli('shell', file, '--uncertainty', '--samples', '100')).out).toMatch(/^50 to 80 Hz: /m);
    expect((await cli('predict', file)).out).toContain('Below 100 Hz next to nothing was measured');
    const { assemblies } = (await json('predict', file, '--uncertainty', '--samples', '100')) as {
      assemblies: Record<string, { intervals: { beyond: unknown[] } }>;
    };
    for (const { intervals } of Object.values(assemblies))
      expect(intervals.beyond.slice(3, 6).every(Boolean)).toBe(true);
  });

  it('draws the same from the same start', async () => {
    const ask = (start: string) => cli('shell', file, '--uncertainty', '--samples', '200', '--seed', start);
    expect((await ask('4')).out).toBe((await ask('4')).out);
    expect((await ask('5')).out).not.toBe((await ask('4')).out);
    expect((await ask('4')).out).toMatch(/Chance that the room meets Rw 30 dB: \d+ %/);
  });

  it('names option, value and range of what it cannot use', async () => {
    const sentences = async (...words: string[]) => (await cli(...words)).sentences;
    expect(await sentences('shell', file, '--uncertainty', '--samples', 'many')).toEqual([
      '--samples is "many"; allowed is a whole number from 100 to 200000.',
    ]);
    expect(await sentences('shell', file, '--samples', '500')).toEqual(['--samples needs --uncertainty beside it.']);
    expect(await sentences('rate', file, '--uncertainty')).toEqual([
      '--uncertainty goes with predict and shell, not with rate.',
    ]);
  });
});
