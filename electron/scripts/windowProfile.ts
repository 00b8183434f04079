import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { isRunning } from './isRunning.ts';

export interface Profile {
  readonly folder: string;
  readonly release: () => void;
}

/** A confined browser can write to its own folder only. */
const parentFor = (browser: string, data: string): string =>
  browser.startsWith('/snap/') ? join(homedir(), 'snap', 'chromium', 'common', 'lullwright') : data;

const isTaken = (owner: string): boolean => existsSync(owner) && isRunning(Number(readFileSync(owner, 'utf8')));

/**
 * A browser profile for this window alone: a browser whose profile is in use hands its page to the running one and
 * ends, which would end the host as well. The first free one is used again, so that settings last.
 */
export const takeProfile = (browser: string, data: string): Profile => {
  const parent = parentFor(browser, data);
  for (let number = 1; ; number += 1) {
    const folder = join(parent, `window-${number}`);
    const owner = join(folder, 'owner');
    if (isTaken(owner)) continue;
    mkdirSync(folder, { recursive: true });
    writeFileSync(owner, String(process.pid));
    return {
      folder,
      release: () => {
        rmSync(owner, { force: true });
      },
    };
  }
};
