import type { Check, Finding } from './check.ts';

export interface Total {
  passed: number;
  failed: number;
  skipped: number;
}

const indented = (text: string): string => text.trimEnd().replace(/^/gm, '    ');

const report = (check: Check, finding: Finding, seconds: number): void => {
  const counts = finding.passed + finding.failed > 1 ? `, ${finding.passed} of ${finding.passed + finding.failed}` : '';
  const verdict = finding.failed > 0 ? 'FAULT' : 'ok';
  const left = finding.skipped > 0 ? `, ${finding.skipped} skipped` : '';
  console.log(`${verdict.padEnd(6)}${check.name} (${seconds.toFixed(1)} s${counts}${left})`);
  if (finding.remark) console.log(indented(finding.remark));
  if (finding.failed > 0 || finding.passed === 0) console.log(indented(finding.output));
};

/** Runs checks, so many at a time, reports each as it ends, and adds up. */
export const runChecks = async (checks: readonly Check[], abreast: number, total: Total): Promise<void> => {
  const waiting = [...checks];
  const lane = async (): Promise<void> => {
    for (let check = waiting.shift(); check; check = waiting.shift()) {
      const began = performance.now();
      const finding = await check.run();
      report(check, finding, (performance.now() - began) / 1000);
      total.passed += finding.passed;
      total.failed += finding.failed;
      total.skipped += finding.skipped;
    }
  };
  await Promise.all(Array.from({ length: abreast }, lane));
};
