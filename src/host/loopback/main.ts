import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createHost } from '../createHost.ts';
import { dataFolder, makeDataFolder } from '../dataFolder.ts';
import { createLoopback } from './createLoopback.ts';

/** The port of the last run: the same page address lets the browser keep theme, units and the like. */
const lastPort = (file: string): number => {
  try {
    const port = Number(readFileSync(file, 'utf8'));
    return Number.isInteger(port) && port >= 1024 && port <= 65535 ? port : 0;
  } catch {
    return 0;
  }
};

const folder = dataFolder();
try {
  makeDataFolder(folder);
} catch (fault) {
  console.error(fault instanceof Error ? fault.message : String(fault));
  process.exit(1);
}
const portFile = join(folder, 'port');
const pages = fileURLToPath(new URL('../renderer', import.meta.url));
const host = createHost({ folder, pages, runtime: `browser window, Node ${process.versions.node}` });
const loopback = await createLoopback(host, lastPort(portFile));
try {
  writeFileSync(portFile, String(loopback.port));
} catch {
  // A read-only folder is reported by the store; the port is a convenience only.
}

const end = async (): Promise<void> => {
  await loopback.close();
  host.close();
  process.exit(0);
};
process.once('SIGTERM', () => void end());
process.once('SIGINT', () => void end());
if (process.argv.includes('--until-stdin-ends')) {
  process.stdin.resume().once('end', () => void end());
}

console.log(loopback.address);
