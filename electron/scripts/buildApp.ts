import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { build, type InlineConfig, type LogLevel } from 'vite';
import { fingerprint, projectRoot, rememberBuild } from './fingerprint.ts';

type Format = 'es' | 'cjs';

/** One Node-side bundle: everything inside but Electron, the native store and Node itself. */
const nodeBundle = (entry: string, folder: string, file: string, format: Format, logLevel: LogLevel): InlineConfig => ({
  root: projectRoot,
  configFile: false,
  logLevel,
  ssr: { noExternal: true },
  build: {
    ssr: join(projectRoot, entry),
    outDir: join(projectRoot, 'dist', folder),
    emptyOutDir: false,
    target: 'node24',
    minify: false,
    reportCompressedSize: false,
    rolldownOptions: {
      checks: { bundlerTimings: false },
      external: ['electron', 'better-sqlite3', /^node:/, ...builtinModules],
      output: { format, entryFileNames: file, codeSplitting: format === 'es' },
    },
  },
});

/** Host, main process and preload script. */
export const buildNodeSide = async (logLevel: LogLevel): Promise<void> => {
  await build(nodeBundle('src/host/loopback/main.ts', 'host', 'host.js', 'es', logLevel));
  await build(nodeBundle('electron/main.ts', 'main', 'main.js', 'es', logLevel));
  await build(nodeBundle('electron/preload.ts', 'main', 'preload.cjs', 'cjs', logLevel));
};

/** Builds everything into dist/ and remembers from which sources. */
export const buildApp = async (logLevel: LogLevel = 'warn'): Promise<void> => {
  const sources = fingerprint();
  await build({ root: join(projectRoot, 'renderer'), configFile: join(projectRoot, 'vite.config.ts'), logLevel });
  await buildNodeSide(logLevel);
  rememberBuild(sources);
};
