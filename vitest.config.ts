import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/renderer/**', 'tests/e2e/**'],
          testTimeout: 20_000,
        },
      },
      {
        plugins: [svelte(), svelteTesting()],
        test: {
          name: 'component',
          environment: 'happy-dom',
          include: ['tests/renderer/**/*.test.ts'],
          testTimeout: 20_000,
        },
      },
    ],
  },
});
