import { spawn, type ChildProcess } from 'node:child_process';
import { dataFolder, makeDataFolder } from '../../src/host/dataFolder.ts';
import { openAppWindow } from './appWindow.ts';
import { buildApp } from './buildApp.ts';
import { findRuntime } from './electronRuntime.ts';
import { findBrowser } from './findBrowser.ts';
import { isFresh, projectRoot } from './fingerprint.ts';
import { startHost } from './startHost.ts';
import { takeProfile } from './windowProfile.ts';

const QUICK_END = 3_000;

const children = new Set<ChildProcess>();
const follow = (child: ChildProcess): ChildProcess => {
  children.add(child);
  child.once('exit', () => children.delete(child));
  return child;
};
const ended = (child: ChildProcess): Promise<number> =>
  new Promise((resolve) => {
    child.once('exit', (code) => {
      resolve(code ?? 0);
    });
    child.once('error', () => {
      resolve(1);
    });
  });
const endAll = (): void => {
  for (const child of children) child.kill('SIGTERM');
};
for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, endAll);

const hasScreen = (): boolean =>
  process.platform !== 'linux' || Boolean(process.env['DISPLAY'] ?? process.env['WAYLAND_DISPLAY']);

/** @returns whether Electron carried the app to its end; false where it did not get going */
const runElectron = async (executable: string): Promise<boolean> => {
  const { ELECTRON_RUN_AS_NODE: _, ...environment } = process.env;
  const asRoot = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const began = performance.now();
  const child = follow(spawn(executable, [projectRoot, ...asRoot], { stdio: 'inherit', env: environment }));
  const code = await ended(child);
  if (code !== 0 && performance.now() - began < QUICK_END) return false;
  process.exitCode = code;
  return true;
};

/** The same app over the loopback host, in a window of the machine's own browser. */
const runInBrowser = async (data: string): Promise<void> => {
  const host = await startHost();
  follow(host.process);
  const browser = hasScreen() ? findBrowser() : null;
  if (browser === null) {
    const why = hasScreen() ? 'No browser of the Chromium family was found' : 'There is no screen here';
    console.log(`${why}; Lullwright is served at ${host.address} until this command is stopped.`);
    await ended(host.process);
    return;
  }
  const profile = takeProfile(browser, data);
  const began = performance.now();
  const code = await Promise.race([
    ended(follow(openAppWindow(browser, host.address, profile.folder))),
    ended(host.process),
  ]);
  profile.release();
  if (code !== 0 && performance.now() - began < QUICK_END && host.process.exitCode === null) {
    console.log(
      `The browser window did not open; Lullwright is served at ${host.address} until this command is stopped.`,
    );
    await ended(host.process);
  }
  endAll();
};

const data = dataFolder();
try {
  makeDataFolder(data);
} catch (fault) {
  console.error(fault instanceof Error ? fault.message : String(fault));
  process.exit(1);
}
if (!isFresh()) {
  console.log('Building Lullwright (a few seconds, only after a change)…');
  await buildApp();
}
const runtime = hasScreen() ? await findRuntime(data) : null;
let carried = false;
if (runtime?.executable) {
  carried = await runElectron(runtime.executable);
  if (!carried) console.log('Electron did not start here; opening the app in this machine’s browser instead.');
} else if (runtime) {
  console.log(`${runtime.why}; opening the app in this machine’s browser instead.`);
}
if (!carried) {
  try {
    await runInBrowser(data);
  } catch (fault) {
    console.error(fault instanceof Error ? fault.message : String(fault));
    process.exitCode = 1;
    endAll();
  }
}
