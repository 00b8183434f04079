// Plain JavaScript that old versions of Node can read as well: they get a sentence instead of a syntax error or a crash
// of the store's native part.
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
const script = process.argv[2];
if (major < 22 || (major === 22 && minor < 18)) {
  console.error(
    `Lullwright needs Node 22.18 or newer, this is ${process.versions.node}: install a newer Node from your system's ` +
      `package source, then run "npm ci" again.`,
  );
  process.exit(1);
} else if (script) {
  process.argv.splice(1, 2, resolve(script));
  await import(pathToFileURL(resolve(script)).href);
}
