import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findBrowser } from '../findBrowser.ts';
import { oneCheck, type Check } from './check.ts';
import { ensureBrowser } from './ensureBrowser.ts';
import { runTool } from './runTool.ts';

interface Report {
  readonly stats: {
    readonly expected: number;
    readonly unexpected: number;
    readonly flaky: number;
    readonly skipped: number;
  };
}

/** The app as its users meet it: built, served and driven in a real browser. */
export const windowTests: Check = {
  name: 'end-to-end tests',
  group: 'e2e',
  run: async () => {
    const missing = findBrowser() === null ? await ensureBrowser() : null;
    if (missing !== null) return { passed: 0, failed: 0, skipped: 1, output: missing };
    const folder = mkdtempSync(join(tmpdir(), 'lullwright-report-'));
    const file = join(folder, 'playwright.json');
    const { code, output } = await runTool('node_modules/@playwright/test/cli.js', ['test', '--reporter=list,json'], {
      PLAYWRIGHT_JSON_OUTPUT_FILE: file,
    });
    try {
      const { expected, unexpected, flaky, skipped } = (JSON.parse(readFileSync(file, 'utf8')) as Report).stats;
      const failed = unexpected + flaky;
      const remark = output.split('\n').find((line) => line.includes('is not tested:')) ?? '';
      return { passed: expected, failed: failed === 0 && code !== 0 ? 1 : failed, skipped, output, remark };
    } catch {
      return oneCheck(false, output);
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
};
