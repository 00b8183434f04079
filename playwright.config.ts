import { defineConfig } from '@playwright/test';
import { findBrowser } from './electron/scripts/findBrowser.ts';

const browser = findBrowser();
const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];

export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '**/*.spec.ts',
  globalSetup: './tests/e2e/support/buildFirst.ts',
  outputDir: 'test-results',
  fullyParallel: true,
  workers: 2,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: [['list']],
  use: {
    viewport: { width: 1280, height: 800 },
    locale: 'en-GB',
    trace: 'retain-on-failure',
    screenshot: 'only-on-failure',
    launchOptions: { ...(browser ? { executablePath: browser } : {}), args: asRoot },
  },
});
