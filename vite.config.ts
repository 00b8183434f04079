import { svelte } from '@sveltejs/vite-plugin-svelte';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The window's page; main process, preload script and host are built by electron/scripts/buildApp.ts. */
export default defineConfig({
  root: here('renderer'),
  base: './',
  plugins: [svelte({ configFile: here('svelte.config.js') })],
  worker: { format: 'es' },
  build: {
    outDir: here('dist/renderer'),
    emptyOutDir: true,
    target: 'chrome140',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { checks: { bundlerTimings: false } },
    reportCompressedSize: false,
    // the page comes from this machine, not over a network
    chunkSizeWarningLimit: 1500,
  },
});
