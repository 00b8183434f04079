import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { findRuntime } from '../../../electron/scripts/electronRuntime.ts';
import { findBrowser } from '../../../electron/scripts/findBrowser.ts';
import { takeProfile } from '../../../electron/scripts/windowProfile.ts';

describe('start without Electron', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'lullwright-start-'));
  });
  afterEach(() => {
    rmSync(folder, { recursive: true });
  });
  const executable = (name: string): string => {
    const file = join(folder, name);
    writeFileSync(file, '#!/bin/sh\n');
    chmodSync(file, 0o755);
    return file;
  };

  it('finds a browser on the path, and takes one named by hand before it', () => {
    const found = executable('chromium');
    const named = executable('my-browser');
    expect(findBrowser({ PATH: `/nowhere:${folder}` }, 'linux')).toBe(found);
    expect(findBrowser({ PATH: folder, LULLWRIGHT_BROWSER: named }, 'linux')).toBe(named);
    expect(findBrowser({ LULLWRIGHT_BROWSER: join(folder, 'gone') }, 'linux')).toBeNull();
    expect(findBrowser({ PROGRAMFILES: folder }, 'win32')).toBeNull();
  });

  it('gives each window a profile of its own, and a left one back to the next', () => {
    const first = takeProfile('/usr/bin/chromium', folder);
    const second = takeProfile('/usr/bin/chromium', folder);
    expect(first.folder).not.toBe(second.folder);
    first.release();
    expect(takeProfile('/usr/bin/chromium', folder).folder).toBe(first.folder);
  });

  it('takes over the profile of a run that died without leaving it', () => {
    const abandoned = join(folder, 'window-1');
    mkdirSync(abandoned);
    writeFileSync(join(abandoned, 'owner'), '999999999');
    expect(takeProfile('/usr/bin/chromium', folder).folder).toBe(abandoned);
  });

  it('does not try to fetch Electron’s runtime again on the day it failed', async () => {
    const record = join(folder, 'electron-runtime.json');
    const failed = { at: Date.now() - 3600_000, pid: 999999999, failure: 'no network' };
    writeFileSync(record, JSON.stringify(failed));
    const began = performance.now();
    const runtime = await findRuntime(folder);
    expect(performance.now() - began).toBeLessThan(500);
    if (runtime.executable === null) expect(runtime.why).toContain('no network');
    else expect(existsSync(runtime.executable)).toBe(true);
  });
});
