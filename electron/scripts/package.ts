import { packager } from '@electron/packager';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildApp } from './buildApp.ts';
import { isFresh, projectRoot } from './fingerprint.ts';
import { setFuses } from './setFuses.ts';
import { readManifest, stageApp } from './stageApp.ts';

/** A folder with Electron's runtime as a zip, where the network has none to give. */
const zips = process.env['LULLWRIGHT_ELECTRON_ZIPS'];
const electron = JSON.parse(readFileSync(join(projectRoot, 'node_modules/electron/package.json'), 'utf8')) as {
  version: string;
};
const name = 'Lullwright';
const staging = join(projectRoot, 'dist', 'staging');

if (!isFresh()) await buildApp();
stageApp(staging);
try {
  const [folder] = await packager({
    dir: staging,
    out: join(projectRoot, 'dist', 'packages'),
    name,
    executableName: name,
    icon: join(projectRoot, 'assets', 'icons', 'lullwright'),
    appVersion: readManifest().version,
    electronVersion: electron.version,
    asar: { unpack: '**/*.node' },
    prune: false,
    overwrite: true,
    quiet: true,
    ...(zips ? { electronZipDir: zips } : {}),
    afterComplete: [({ buildPath, platform }) => setFuses(buildPath, name, platform)],
  });
  console.log(`Packaged into ${folder ?? 'nothing'}.`);
} catch (fault) {
  const reason = fault instanceof Error ? fault.message : String(fault);
  console.error(
    `Nothing was packaged: Electron’s runtime ${electron.version} for this system could not be had (${reason}); ` +
      `try again with a network, or name a folder that holds its zip in LULLWRIGHT_ELECTRON_ZIPS.`,
  );
  process.exitCode = 1;
}
