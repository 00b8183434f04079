import { describe, expect, it } from 'vitest';
import { csvFile } from '../../../renderer/actions/csvFile.ts';

describe('a table as comma-separated text', () => {
  it('quotes commas, quotes and line ends as RFC 4180 asks', () => {
    const text = csvFile({
      headings: ['name', 'R_dB'],
      rows: [
        ['Door, "old"', 31.5],
        ['Roof\nslope', null],
      ],
    });
    expect(text).toBe('\ufeffname,R_dB\r\n"Door, ""old""",31.5\r\n"Roof\nslope",\r\n');
  });
  it('keeps a text that looks like a formula a text', () => {
    expect(csvFile({ headings: ['name'], rows: [['=1+1']] })).toContain("'=1+1");
  });
  it('keeps a negative number a number', () => {
    expect(csvFile({ headings: ['R'], rows: [[-3.2]] })).toContain('\r\n-3.2\r\n');
  });
});
