import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { dataFolder, makeDataFolder } from '../../src/host/dataFolder.ts';

describe('folder of the projects', () => {
  it.each([
    ['linux', {}, '/home/me/.local/share/lullwright'],
    ['linux', { XDG_DATA_HOME: '/data' }, '/data/lullwright'],
    ['darwin', {}, '/home/me/Library/Application Support/Lullwright'],
    ['linux', { LULLWRIGHT_DATA: '/mnt/stick', XDG_DATA_HOME: '/data' }, '/mnt/stick'],
  ] as const)('is the platform’s own, or the one named (%s, %o)', (platform, environment, folder) => {
    expect(dataFolder(environment, platform, '/home/me')).toBe(folder);
  });
  it('is the roaming folder on Windows', () => {
    expect(dataFolder({ APPDATA: 'C:\\Users\\me\\AppData\\Roaming' }, 'win32', 'C:\\Users\\me')).toMatch(
      /^C:\\Users\\me\\AppData\\Roaming[\\/]Lullwright$/,
    );
  });
});

describe('making the folder of the projects', () => {
  let place: string;
  beforeEach(() => {
    place = mkdtempSync(join(tmpdir(), 'lullwright-folder-'));
  });
  afterEach(() => {
    rmSync(place, { recursive: true });
  });

  it('makes it with all above it, and leaves one that is there', () => {
    const folder = join(place, 'shed', 'sound');
    makeDataFolder(folder);
    makeDataFolder(folder);
    expect(existsSync(folder)).toBe(true);
  });

  const refused = (path: (file: string) => string): string => {
    const file = join(place, 'notes.txt');
    writeFileSync(file, 'no folder');
    return path(file);
  };
  it.each([
    ['a file', (file: string) => file],
    ['below a file', (file: string) => join(file, 'sound', 'room')],
  ])('names the folder and a way out where it cannot be made: %s', (_, path) => {
    const folder = refused(path);
    expect(() => {
      makeDataFolder(folder);
    }).toThrow(
      new RegExp(`^Lullwright cannot keep its projects in ${folder} \\(.+\\): name a folder .* LULLWRIGHT_DATA\\.$`),
    );
  });

  it.each([
    ['below a file', () => refused((file) => join(file, 'sound'))] as const,
    ...(process.platform === 'linux' ? [['where a parent takes no folder', () => '/proc/nowhere'] as const] : []),
  ])('ends the start at once with status 1 and one sentence, %s', (_, path) => {
    const folder = path();
    const main = join(import.meta.dirname, '../../src/host/loopback/main.ts');
    const { status, stderr, stdout } = spawnSync(process.execPath, [main], {
      env: { ...process.env, LULLWRIGHT_DATA: folder },
      encoding: 'utf8',
      timeout: 10_000,
    });
    expect(stdout).toBe('');
    expect(stderr.trim()).toMatch(
      new RegExp(`^Lullwright cannot keep its projects in ${folder} .*LULLWRIGHT_DATA\\.$`),
    );
    expect(status).toBe(1);
  });
});
