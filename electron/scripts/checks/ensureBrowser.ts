import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findBrowser } from '../findBrowser.ts';

const MISSING =
  'The end-to-end tests were left out: they need a browser of the Chromium family (on Debian: apt-get install chromium).';

/** Installs Debian's Chromium where we may. @returns null, or one sentence on why there is no browser */
export const ensureBrowser = (): Promise<string | null> => {
  const mayInstall = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  if (!mayInstall) return Promise.resolve(MISSING);
  console.log('Installing Chromium for the end-to-end tests (apt-get)…');
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update', '-q'],
    ['install', '-y', '-q', '--no-install-recommends', 'chromium'],
  ])
    spawnSync('apt-get', args, { env: environment, stdio: 'ignore', timeout: 300_000 });
  return Promise.resolve(findBrowser() === null ? MISSING : null);
};
