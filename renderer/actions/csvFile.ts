/** A table as it is shown: one row of headings, then the rows; null is an empty cell. */
export interface TableContent {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

const cell = (value: string | number | null): string => {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  // A text that a spreadsheet would run as a formula is kept a text.
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/** Comma-separated text (RFC 4180, with a byte-order mark so that spreadsheets read the letters right). */
export const csvFile = (table: TableContent): string =>
  '\ufeff' + [table.headings, ...table.rows].map((row) => row.map(cell).join(',')).join('\r\n') + '\r\n';
