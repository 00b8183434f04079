import { existsSync, mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

/** Folders that are missing, outermost first. */
const missing = (folder: string): readonly string[] =>
  existsSync(folder) ? [] : [...missing(dirname(folder)), folder];

/**
 * Makes a folder with all above it, one after another: Node's own recursive way never ends where a parent is there and
 * takes no folder, as below /proc.
 * @throws what the file system reports
 */
export const makeFolder = (folder: string): void => {
  for (const step of missing(resolve(folder)))
    try {
      mkdirSync(step);
    } catch (fault) {
      // another window may have made it meanwhile
      if (!existsSync(step)) throw fault;
    }
};
