import { expect, test } from 'vitest';
import { createPredictor } from '../../../src/engine/transmission/index.ts';
import { errorRecord } from './errorRecord.ts';
import { failedGates, gatesOf } from './gates.ts';

test('measured constructions are predicted as closely as the published record says', () => {
  expect(failedGates(gatesOf(errorRecord(createPredictor())))).toEqual([]);
});
