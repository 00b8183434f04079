import { writeFileSync } from 'node:fs';
import { MODEL_ERROR_RECORD } from '../../../src/engine/uncertainty/index.ts';
import { coverage } from './coverage.ts';
import { coverageFaults } from './coverageFaults.ts';
import { coverageLines, coverageRows } from './coverageTable.ts';
import { recordSource } from './recordSource.ts';

/**
 * Prints how well the stated intervals hold; with `record`, renews the engine's record of the method's error.
 * @returns what does not hold, in words
 */
export const reportCoverage = (record: boolean): readonly string[] => {
  const judged = coverage();
  console.log(`\n${coverageLines(coverageRows(judged.covered)).join('\n')}`);
  if (record) {
    const file = new URL('../../../src/engine/uncertainty/modelErrorRecord.ts', import.meta.url);
    writeFileSync(file, recordSource(judged.record));
    console.log('\nwritten: src/engine/uncertainty/modelErrorRecord.ts');
  }
  return coverageFaults(judged, record ? null : MODEL_ERROR_RECORD);
};
