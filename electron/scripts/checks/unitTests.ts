import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { oneCheck, type Check } from './check.ts';
import { runTool } from './runTool.ts';

interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly { readonly status: string; readonly assertionResults: readonly unknown[] }[];
}

/** Laws, reference values, architecture, host and components; a file that cannot be loaded counts as one failure. */
export const unitTests: Check = {
  name: 'unit, reference, architecture and component tests',
  group: 'unit',
  run: async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lullwright-report-'));
    const file = join(folder, 'vitest.json');
    const { code, output } = await runTool('node_modules/vitest/vitest.mjs', [
      'run',
      '--reporter=dot',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ]);
    try {
      const report = JSON.parse(readFileSync(file, 'utf8')) as Report;
      const unloaded = report.testResults.filter((it) => it.status === 'failed' && it.assertionResults.length === 0);
      const failed = report.numFailedTests + unloaded.length;
      return {
        passed: report.numPassedTests,
        failed: failed === 0 && code !== 0 ? 1 : failed,
        skipped: report.numPendingTests + report.numTodoTests,
        output,
      };
    } catch {
      return oneCheck(false, output);
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
};
