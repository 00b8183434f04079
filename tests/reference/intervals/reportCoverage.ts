import { writeFileSync } from 'node:fs';
import { coverage } from './coverage.ts';
import { coverageLines, coverageRows, failedCoverage } from './coverageTable.ts';
import { recordSource } from './recordSource.ts';

/**
 * Prints how well the stated intervals hold; with `record`, renews the engine's record of the method's error.
 * @returns what does not hold, in words
 */
export const reportCoverage = (record: boolean): readonly string[] => {
  const judged = coverage();
  const rows = coverageRows(judged.covered);
  console.log(`\n${coverageLines(rows).join('\n')}`);
  if (record) {
    const file = new URL('../../../src/engine/uncertainty/modelErrorRecord.ts', import.meta.url);
    writeFileSync(file, recordSource(judged.record));
    console.log('\nwritten: src/engine/uncertainty/modelErrorRecord.ts');
  }
  return failedCoverage(rows);
};
