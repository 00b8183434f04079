import { spawn, type ChildProcess } from 'node:child_process';

const isRoot = process.getuid?.() === 0;

/** Root may not use the browser's sandbox; the second switch keeps the browser from complaining about the first. */
const AS_ROOT = ['--no-sandbox', '--test-type'];

/** Opens one address as an application window: no tabs, no address bar, nothing fetched beside the page. */
export const openAppWindow = (browser: string, address: string, profile: string): ChildProcess =>
  spawn(
    browser,
    [
      `--app=${address}`,
      `--user-data-dir=${profile}`,
      '--window-size=1280,800',
      '--no-first-run',
      '--no-default-browser-check',
      '--disable-background-mode',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--password-store=basic',
      ...(isRoot ? AS_ROOT : []),
    ],
    { stdio: 'ignore' },
  );
