import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { run } from '../../src/host/cli/run.ts';
import exampleDocument from '../support/exampleDocument.json' with { type: 'json' };

const main = fileURLToPath(new URL('../../src/host/cli/main.ts', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'lullwright-cli-'));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const file = (name: string, content: string | Buffer): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const lullwright = (words: readonly string[], input?: string | Buffer) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [main, ...words], {
    input: input ?? '',
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
};
const json = (words: readonly string[], input?: string): Record<string, unknown> => {
  const { status, stdout, stderr } = lullwright([...words, '--json'], input);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(stdout.trim().split('\n')).toHaveLength(1);
  return JSON.parse(stdout) as Record<string, unknown>;
};

const example = file('example.json', JSON.stringify(exampleDocument));
const BANDS = [
  25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000,
  5000, 6300, 8000, 10000,
];
const RATINGS = ['Rw', 'C', 'Ctr', 'C50_5000', 'Ctr50_5000', 'STC', 'OITC'];

describe('lullwright predict', () => {
  it('prints one JSON object with what is promised of each make-up', () => {
    const { assemblies } = json(['predict', example]) as { assemblies: Record<string, Record<string, unknown>> };
    expect(Object.keys(assemblies)).toEqual(['wall-a', 'wall-b', 'door-a']);
    for (const it of Object.values(assemblies)) {
      expect(Object.keys(it).sort()).toEqual(
        [
          'R_dB',
          'bands_Hz',
          'critical_Hz',
          'ratings',
          'resonances_Hz',
          'spread_dB',
          'surface_mass_kg_m2',
          'thickness_mm',
        ].sort(),
      );
      expect(it['bands_Hz']).toEqual(BANDS);
      expect(it['R_dB']).toHaveLength(27);
      expect(it['spread_dB']).toHaveLength(27);
      expect(Object.keys(it['ratings'] as object).slice(0, 7)).toEqual(RATINGS);
    }
  });

  it('prints a table to read without --json, and reads standard input for -', () => {
    const { status, stdout } = lullwright(['predict', '-'], JSON.stringify(exampleDocument));
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Rw, dB +\d+ +\d+ +\d+$/m);
    expect(stdout).toMatch(/^10000( +\d+\.\d ±\d+){3}$/m);
    expect(stdout).not.toContain('{');
  });
});

describe('lullwright shell', () => {
  it('prints the whole, its parts by share and the one that limits', () => {
    const shell = json(['shell', example]) as {
      parts: { id: string; share: number }[];
      limiting: string;
      bands_Hz: number[];
    };
    expect(Object.keys(shell).sort()).toEqual(['R_dB', 'bands_Hz', 'limiting', 'parts', 'ratings', 'spread_dB']);
    expect(Object.keys(shell.parts[0] ?? {})).toEqual([
      'id',
      'area_m2',
      'share',
      'share_by_band',
      'if_perfect_Rw_gain_dB',
    ]);
    const shares = shell.parts.map((part) => part.share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(shell.limiting).toBe(shell.parts[0]?.id);
  });

  it('says in words which part limits the room', () => {
    expect(lullwright(['shell', example]).stdout).toMatch(
      /^Roof \(roof\) limits the room: \d+ % of what gets out leaves through it\./,
    );
  });
});

describe('lullwright rate', () => {
  const bands = BANDS.slice(6, 22);
  // worked example of the standard's procedure: a curve equal to the reference curve may be shifted up by 2 dB
  const reference = [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56];

  it('rates a table, missing what the bands do not allow', () => {
    const csv = file('curve.csv', ['Band;R', ...bands.map((band, i) => `${band};${reference[i] ?? 0},0`)].join('\r\n'));
    const { ratings } = json(['rate', csv]) as { ratings: Record<string, number | null> };
    expect(ratings).toMatchObject({ Rw: 54, STC: null, OITC: null, C50_5000: null });
    expect(lullwright(['rate', csv]).stdout).toMatch(/^Rw, dB +54$/m);
  });

  it('reads a table saved by a spreadsheet in UTF-16', () => {
    const text = `\uFEFF${bands.map((band, i) => `${band}\t${reference[i] ?? 0}`).join('\n')}`;
    expect(json(['rate', file('wide.csv', Buffer.from(text, 'utf16le'))])).toMatchObject({ ratings: { Rw: 54 } });
  });

  it('names every line that it cannot read', () => {
    const { status, stderr, stdout } = lullwright(['rate', file('bad.csv', '100;20\n125;loud\n160;30;1\n'), '--json']);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr.trim().split('\n')).toHaveLength(2);
    expect(stderr).toContain('Line 2: the value "loud"');
  });
});

describe('bad input', () => {
  const refused = async (words: readonly string[]): Promise<string> => {
    const { status, out, sentences } = await run(words, 100, '1');
    expect({ status, out }).toEqual({ status: 2, out: '' });
    return sentences.join('\n');
  };
  const fromInput = (input: string | Buffer, command = 'predict'): string => {
    const { status, stdout, stderr } = lullwright([command, '-', '--json'], input);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).not.toMatch(/^\s+at /m);
    return stderr;
  };

  it('has one sentence for each fault, with path, value and what is allowed', () => {
    const faulty = { ...exampleDocument, source: 'kazoo', compare: ['none'] };
    const lines = fromInput(JSON.stringify(faulty)).trim().split('\n');
    expect(lines).toEqual([
      expect.stringMatching(/^compare\[0\] is "none"; allowed: an id under "assemblies": wall-a, wall-b, door-a\.$/),
      expect.stringMatching(/^source is "kazoo"; allowed: one of flat, /),
    ]);
  });

  it('is a file that is not there, is a folder, links to itself, or is no text', async () => {
    expect(await refused(['predict', join(folder, 'none.json')])).toMatch(
      /none\.json cannot be read: there is no such file/,
    );
    mkdirSync(join(folder, 'sub'));
    expect(await refused(['shell', join(folder, 'sub')])).toContain('it is a folder; name the file in it');
    symlinkSync('loop', join(folder, 'loop'));
    expect(await refused(['shell', join(folder, 'loop')])).toContain('a link that leads back to itself');
    expect(await refused(['rate', join(example, 'x')])).toContain('a part of its path is not a folder');
    expect(await refused(['predict', file('picture.json', Buffer.from([0x89, 0x50, 0xff, 0xfe, 0x00]))])).toContain(
      'is not text in UTF-8',
    );
  });

  it('is a file of 50 MB, which is not read, and an endless one, which is not read to its end', async () => {
    const large = file('large.json', '{');
    truncateSync(large, 50_000_000);
    expect(await refused(['predict', large])).toContain('large.json has 50 MB; at most 20 MB are read');
    expect(await refused(['predict', '/dev/zero'])).toContain('more than 20 MB');
    expect(fromInput(Buffer.alloc(25_000_000, 32))).toContain('Standard input has more than 20 MB');
  });

  it('is JSON cut off, empty, of another kind, or of a newer Lullwright', () => {
    expect(fromInput(JSON.stringify(exampleDocument).slice(0, 500))).toContain('is not complete JSON');
    expect(fromInput('')).toContain('it is empty');
    expect(fromInput('[1]')).toContain('This is not a Lullwright project');
    expect(fromInput('{"format":"lullwright/project@7"}')).toContain('saved by a newer Lullwright');
    const bare = { format: 'lullwright/project@1', name: 'Bare', assemblies: {}, surfaces: [] };
    expect(fromInput(JSON.stringify(bare), 'shell')).toContain('Add the walls, floor and roof');
  });

  it('is a command line that cannot be understood', async () => {
    expect(await refused(['pretict', example])).toBe('There is no command "pretict". Did you mean predict?');
    expect(await refused(['predict', example, '--jsn'])).toBe('There is no option --jsn. Did you mean --json?');
    expect(await refused(['predict'])).toContain('lullwright predict needs a file');
    expect(await refused(['predict', example, 'other.json'])).toContain('takes one file; "other.json" is too much');
    expect(await refused(['--json'])).toContain('A command is missing before --json');
    expect(await refused(['constructor', example])).toContain('There is no command "constructor"');
    expect(await refused(['rate', '--', '--json'])).toContain('--json cannot be read: there is no such file');
  });
});

describe('help', () => {
  it('comes without a command and with --help, on all and on each', async () => {
    for (const words of [[], ['--help'], ['-h']]) {
      const { status, out } = await run(words, 100, '1');
      expect(status).toBe(0);
      for (const part of ['predict FILE', 'shell FILE', 'rate FILE.csv', '--json', 'Exit status'])
        expect(out).toContain(part);
    }
    for (const command of ['predict', 'shell', 'rate']) {
      const { status, out } = await run([command, '--help'], 100, '1');
      expect(status).toBe(0);
      expect(out).toMatch(new RegExp(`^Usage: lullwright ${command} FILE`));
    }
    expect(lullwright([]).stdout).toContain('Usage: lullwright COMMAND FILE');
  });
});

describe('a reader that closes early', () => {
  it('is no fault', async () => {
    const wide = {
      ...exampleDocument,
      assemblies: Object.fromEntries(
        Array.from({ length: 120 }, (_, i) => [`wall-${i}`, exampleDocument.assemblies['wall-a']]),
      ),
      surfaces: [],
      options: [],
      compare: [],
    };
    const child = spawn(process.execPath, [main, 'predict', file('wide.json', JSON.stringify(wide)), '--json']);
    const ended = new Promise<{ status: number | null; stderr: string }>((resolve) => {
      const said: Buffer[] = [];
      child.stderr.on('data', (piece: Buffer) => said.push(piece));
      child.on('close', (status) => resolve({ status, stderr: Buffer.concat(said).toString() }));
    });
    child.stdout.destroy();
    expect(await ended).toEqual({ status: 0, stderr: '' });
  });
});
