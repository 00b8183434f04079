import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { run } from '../../src/host/cli/run.ts';
import { differences, goldenBox, meanOf } from '../reference/linedBox/goldenBox.ts';

const folder = mkdtempSync(join(tmpdir(), 'lullwright-box-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const written = (content: unknown): string => {
  const path = join(folder, 'box.json');
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
};

const { geometry, TL_multimode: reference } = goldenBox('B02');
const document = { geometry, h_m: 0.02 };
const box = (content: unknown, ...options: string[]) => run(['box', written(content), ...options], 100, '0');

describe('lullwright box', () => {
  it('prints one JSON object with what is promised', async () => {
    const { out, status, sentences } = await box(document, '--json');
    expect({ status, sentences, lines: out.split('\n').length }).toEqual({ status: 0, sentences: [], lines: 1 });
    const printed = JSON.parse(out) as Record<string, number[]>;
    expect(Object.keys(printed)).toEqual(['bands_Hz', 'TL_plane_dB', 'TL_multimode_dB', 'unknowns', 'seconds']);
    expect(printed['bands_Hz']).toHaveLength(21);
    expect(printed['unknowns']).toBeGreaterThan(1000);
    expect(printed['seconds']).toBeGreaterThan(0);
    const errors = differences(printed['TL_multimode_dB'] ?? [], reference).slice(0, 14);
    // 20 mm against 8 mm, up to 1 kHz
    expect(meanOf(errors)).toBeLessThan(0.3);
  });

  it('prints a table for reading, and says what it is not', async () => {
    const { out, status } = await box(document);
    expect(status).toBe(0);
    expect(out).toContain('All waves, dB');
    expect(out).toContain('never compared with a measurement');
    expect(out.split('\n').filter((line) => /^\d+ {2,}/.test(line))).toHaveLength(21);
  });

  it('helps', async () => {
    const { out, status } = await run(['box', '--help'], 100, '0');
    expect(status).toBe(0);
    for (const word of ['"geometry"', 'h_m', 'solids', 'linings', 'ports', '60000']) expect(out).toContain(word);
  });

  const changed = (change: object): unknown => ({ ...document, geometry: { ...geometry, ...change } });
  const [port] = geometry.ports;
  it.each<[string, unknown, string[]]>([
    ['text that is no JSON', '{"geometry":', ['This is not a box: it is not complete JSON']],
    ['an empty file', '', ['This is not a box: it is empty.']],
    ['a list', [], ['The document is a list of 0; allowed: an object with "geometry" and "h_m".']],
    ['a missing size', { geometry, h: 0.01 }, ['h (0.01) is not a key', 'h_m is missing.']],
    ['a size below nothing', { geometry, h_m: -1 }, ['h_m is -1; allowed: a number from 0.001 to 0.05 m.']],
    ['too fine a grid', { geometry, h_m: 0.002 }, ['h_m is 0.002; allowed: a grid of at most 60000 unknowns']],
    ['a length in words', changed({ L: 'long' }), ['geometry.L is "long"; allowed: a number in metres.']],
    ['a hall', changed({ L: 60 }), ['geometry.L is 60; allowed: a number from 0.05 to 6 m.']],
    ['a mistyped key', changed({ lining: [] }), ['Did you mean linings?']],
    ['one port', changed({ ports: [port] }), ['geometry.ports is a list of 1; allowed: two ports']],
    [
      'a port outside',
      changed({ ports: [port, { ...port, c: 0.39 }] }),
      ['geometry.ports[1] is "from 0.3491 to 0.4309 m"'],
    ],
    [
      'the duct’s diameter as width',
      changed({ ports: [port, { ...port, side: 'E', w: 0.125 }] }),
      ['leave w out or set it to S/H.'],
    ],
    [
      'a wall across',
      changed({ solids: [[0.5, 0, 0.512, 0.4]] }),
      ['leave a way between the ports. Leave a gap in it.'],
    ],
    [
      'a partition inside out',
      changed({ solids: [[0.5, 0.3, 0.4, 0.1]] }),
      ['geometry.solids[0] is "0.5, 0.3, 0.4, 0.1"'],
    ],
    [
      'an unknown material',
      changed({ linings: [[0, 0, 1, 0.1, 'wool']] }),
      ['geometry.linings[0][4] is "wool"; allowed: ["miki"'],
    ],
    ['wool too dense', changed({ linings: [[0, 0, 1, 0.1, ['miki', 1e6]]] }), ['a flow resistivity from 500 to 40000']],
  ])('refuses %s in a sentence', async (_what, content, said) => {
    const { out, status, sentences } = await box(content, '--json');
    expect({ out, status }).toEqual({ out: '', status: 2 });
    expect(sentences).toHaveLength(said.length);
    said.forEach((part, i) => expect(sentences[i]).toContain(part));
  });
});
