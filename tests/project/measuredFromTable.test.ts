import { describe, expect, it } from 'vitest';
import { measuredFromTable, tableOfMeasured } from '../../src/project/measuredFromTable.ts';

describe('a laboratory curve from a table', () => {
  it('is read from pasted columns with its quantity and source', () => {
    expect(measuredFromTable('100\t21,5\n125\t22\n160\t23', 'Dne', ' Report 7 ')).toEqual({
      ok: true,
      measured: { bands_Hz: [100, 125, 160], Dne_dB: [21.5, 22, 23], source: 'Report 7' },
    });
  });

  it('comes back from the table it is shown as', () => {
    const read = measuredFromTable('100 20\n125 21\n160 22', 'R', '');
    if (!read.ok) throw new Error(read.faults.join(' '));
    expect(measuredFromTable(tableOfMeasured(read.measured), 'R', '')).toEqual(read);
  });

  it('is refused with the line and the value, or for want of bands', () => {
    expect(measuredFromTable('100 20\n130 21\n160 22', 'R', '')).toMatchObject({
      ok: false,
      faults: [expect.stringContaining('Line 2')],
    });
    expect(measuredFromTable('100 20\n125 21', 'R', '')).toMatchObject({
      ok: false,
      faults: [expect.stringContaining('at least 3')],
    });
  });
});
