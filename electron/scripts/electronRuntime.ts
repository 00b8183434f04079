import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { projectRoot } from './fingerprint.ts';
import { isRunning } from './isRunning.ts';

const HURRY = 5_000;
const DAY = 24 * 3600 * 1000;

/** How the last attempt to fetch the runtime went; kept in the data folder. */
interface Attempt {
  readonly at: number;
  readonly pid: number;
  readonly failure: string | null;
}

/** The executable to run, or why there is none. */
export interface Runtime {
  readonly executable: string | null;
  readonly why: string;
}

const home = join(projectRoot, 'node_modules', 'electron');
const executableName: Partial<Record<NodeJS.Platform, string>> = {
  win32: 'electron.exe',
  darwin: 'Electron.app/Contents/MacOS/Electron',
};

const read = (file: string): string | null => (existsSync(file) ? readFileSync(file, 'utf8') : null);

/** The runtime's executable where it is wholly unpacked in the version that package.json asks for. */
export const presentRuntime = (): string | null => {
  const manifest = read(join(home, 'package.json'));
  if (manifest === null) return null;
  const { version } = JSON.parse(manifest) as { version: string };
  const unpacked = read(join(home, 'dist', 'version'))
    ?.trim()
    .replace(/^v/, '');
  const executable = join(home, 'dist', executableName[process.platform] ?? 'electron');
  return unpacked === version && read(join(home, 'path.txt')) !== null && existsSync(executable) ? executable : null;
};

const record = (data: string): string => join(data, 'electron-runtime.json');

const lastAttempt = (data: string): Attempt | null => {
  try {
    return JSON.parse(readFileSync(record(data), 'utf8')) as Attempt;
  } catch {
    return null;
  }
};

const remember = (data: string, attempt: Attempt): void => {
  mkdirSync(data, { recursive: true });
  writeFileSync(record(data), JSON.stringify(attempt));
};

/** Downloads and unpacks the runtime; runs in a process of its own so that a start need not wait for its end. */
export const fetchRuntime = (data: string): boolean => {
  const attempt = { at: Date.now(), pid: process.pid };
  remember(data, { ...attempt, failure: null });
  const { status, stderr, error } = spawnSync(process.execPath, [join(home, 'install.js')], {
    encoding: 'utf8',
    timeout: 600_000,
  });
  const reason =
    error?.message ?? stderr.split('\n').find((line) => line.includes('Error')) ?? `status ${String(status)}`;
  if (status !== 0) remember(data, { ...attempt, failure: reason.trim() });
  return status === 0;
};

/** The runtime, fetched if that takes no more than a moment; a slow download goes on for the next start. */
export const findRuntime = async (data: string): Promise<Runtime> => {
  const present = presentRuntime();
  if (present) return { executable: present, why: '' };
  const last = lastAttempt(data);
  if (last?.failure && Date.now() - last.at < DAY)
    return { executable: null, why: `Electron’s runtime could not be downloaded today (${last.failure})` };
  if (last?.failure === null && isRunning(last.pid))
    return { executable: null, why: 'Electron’s runtime is still being downloaded' };
  const script = fileURLToPath(new URL('./fetchRuntime.ts', import.meta.url));
  const child = spawn(process.execPath, [script, data], { detached: true, stdio: 'ignore' });
  const began = performance.now();
  const status = await new Promise<number | null>((resolve) => {
    const timer = setTimeout(resolve, HURRY, null);
    child.once('exit', (code) => {
      clearTimeout(timer);
      resolve(code ?? 1);
    });
  });
  if (status === null) {
    child.unref();
    return { executable: null, why: 'Electron’s runtime is being downloaded and will serve the next start' };
  }
  const fetched = presentRuntime();
  if (fetched) return { executable: fetched, why: '' };
  const took = Math.round(performance.now() - began);
  const failure = lastAttempt(data)?.failure ?? `status ${status}`;
  return { executable: null, why: `Electron’s runtime could not be downloaded (${failure}, ${took} ms)` };
};
