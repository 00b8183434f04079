import { homedir } from 'node:os';
import { join } from 'node:path';

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
