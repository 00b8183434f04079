import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

const LINUX = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'microsoft-edge'];
const APPLE = ['Chromium', 'Google Chrome', 'Microsoft Edge'];
const WINDOWS = [
  'Chromium/Application/chrome.exe',
  'Google/Chrome/Application/chrome.exe',
  'Microsoft/Edge/Application/msedge.exe',
];

const places = (environment: Environment, platform: NodeJS.Platform): string[] => {
  if (platform === 'darwin') {
    const folders = ['/Applications', join(environment['HOME'] ?? '', 'Applications')];
    return folders.flatMap((folder) => APPLE.map((name) => join(folder, `${name}.app`, 'Contents', 'MacOS', name)));
  }
  if (platform === 'win32') {
    const folders = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].map((key) => environment[key]);
    return folders.flatMap((folder) => (folder ? WINDOWS.map((name) => join(folder, name)) : []));
  }
  const folders = [...(environment['PATH'] ?? '').split(delimiter), '/usr/bin', '/usr/local/bin', '/snap/bin'];
  return LINUX.flatMap((name) => folders.filter(Boolean).map((folder) => join(folder, name)));
};

const isExecutable = (file: string): boolean => {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** A browser of the Chromium family on this machine, or null. LULLWRIGHT_BROWSER names one by hand. */
export const findBrowser = (
  environment: Environment = process.env,
  platform: NodeJS.Platform = process.platform,
): string | null => {
  const given = environment['LULLWRIGHT_BROWSER'];
  return (given ? [given] : places(environment, platform)).find(isExecutable) ?? null;
};
