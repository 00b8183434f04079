import { statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { makeFolder } from './makeFolder.ts';

type Environment = Readonly<Record<string, string | undefined>>;

/** Where projects are kept: LULLWRIGHT_DATA, or the platform's own folder for application data. */
export const dataFolder = (
  environment: Environment = process.env,
  platform: NodeJS.Platform = process.platform,
  home: string = homedir(),
): string => {
  const given = environment['LULLWRIGHT_DATA'];
  if (given) return given;
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Lullwright');
  if (platform === 'win32') return join(environment['APPDATA'] ?? join(home, 'AppData', 'Roaming'), 'Lullwright');
  return join(environment['XDG_DATA_HOME'] ?? join(home, '.local', 'share'), 'lullwright');
};

const reasonOf = (fault: unknown): string =>
  fault instanceof Error && 'code' in fault ? String(fault.code) : String(fault);

/**
 * Makes the folder of the projects where there is none.
 * @throws Error with one sentence that names the folder and a way out
 */
export const makeDataFolder = (folder: string): void => {
  const refuse = (why: string): Error =>
    new Error(
      `Lullwright cannot keep its projects in ${folder} (${why}): name a folder that you may write to in LULLWRIGHT_DATA.`,
    );
  try {
    makeFolder(folder);
  } catch (fault) {
    throw refuse(reasonOf(fault));
  }
  if (!statSync(folder).isDirectory()) throw refuse('it is a file');
};
