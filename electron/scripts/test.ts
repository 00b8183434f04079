import type { Check } from './checks/check.ts';
import { runChecks, type Total } from './checks/runChecks.ts';
import { staticChecks } from './checks/staticChecks.ts';
import { unitTests } from './checks/unitTests.ts';
import { windowTests } from './checks/windowTests.ts';

const at = process.argv.indexOf('--only');
const chosen = at < 0 ? null : (process.argv[at + 1] ?? '').split(',');
const wanted = (check: Check): boolean => chosen?.includes(check.group) ?? true;

const total: Total = { passed: 0, failed: 0, skipped: 0 };
await runChecks(staticChecks.filter(wanted), 2, total);
await runChecks([unitTests, windowTests].filter(wanted), 1, total);

const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`${total.passed} passed, ${total.failed} failed${skipped}`);
process.exitCode = total.failed > 0 || total.passed === 0 ? 1 : 0;
