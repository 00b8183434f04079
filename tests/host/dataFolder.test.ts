import { describe, expect, it } from 'vitest';
import { dataFolder } from '../../src/host/dataFolder.ts';

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
