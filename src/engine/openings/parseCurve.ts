import type { Spectrum } from '../quantities/index.ts';
import { exactCentre } from '../quantities/index.ts';
import { OCTAVES, THIRD_OCTAVES } from '../quantities/index.ts';

/** A table read, or what is wrong with it: one sentence per fault. */
export type ParsedCurve =
  { readonly ok: true; readonly curve: Spectrum } | { readonly ok: false; readonly faults: readonly string[] };

const NOMINAL: readonly number[] = [12.5, 16, 20, ...THIRD_OCTAVES, 12500, 16000, 20000];
const LEAST = -40;
const MOST = 150;

/** A tab wins over a semicolon, a semicolon over a comma, a comma over blanks. */
const separatorOf = (text: string): RegExp => {
  if (text.includes('\t')) return /\t/;
  if (text.includes(';')) return /;/;
  return text.includes(',') ? /,/ : /\s+/;
};

const toNumber = (field: string): number => {
  const plain = field
    .replace(/^"|"$/g, '')
    .trim()
    .replace('\u2212', '-')
    .replace(/\s*(hz|db)$/i, '');
  const kilo = /k$/i.test(plain) ? 1000 : 1;
  const digits = plain.replace(/\s*k$/i, '').replace(',', '.');
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(digits) ? Number(digits) * kilo : Number.NaN;
};

const nominalOf = (frequency: number): number | undefined =>
  NOMINAL.find((band) => Math.abs(frequency / exactCentre(band) - 1) < 0.03);

/**
 * A measured curve read from a table of two columns: band in Hz, then R or D in dB. Columns parted by tab, semicolon,
 * comma or blanks; decimal point or decimal comma (the comma then cannot part the columns); one heading line allowed;
 * empty lines and lines that begin with # are skipped; lines in any order.
 * @param text the file's content
 * @returns the curve, ascending, bands at their nominal centres; or the faults, each naming line and value
 * @source nominal centres: IEC 61260-1:2014, table E.1
 * @example parseCurve('100;20,5\n125;22').ok // true
 */
export const parseCurve = (text: string): ParsedCurve => {
  const separator = separatorOf(text);
  const faults: string[] = [];
  const found = new Map<number, { readonly value: number; readonly line: number }>();
  let started = false;
  text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .forEach((raw, index) => {
      const line = index + 1;
      const content = raw.trim();
      if (content === '' || content.startsWith('#')) return;
      const fields = content.split(separator).map((field) => field.trim());
      const [band = '', value = ''] = fields;
      const frequency = toNumber(band);
      const level = toNumber(value);
      const heading = !started && Number.isNaN(frequency) && Number.isNaN(level);
      started = true;
      if (heading) return;
      if (fields.length !== 2) {
        faults.push(
          `Line ${line} has ${fields.length} columns ("${content}"); two are wanted: the band in Hz and the value in dB. ` +
            'With decimal commas, part the columns by a semicolon or a tab.',
        );
        return;
      }
      const nominal = nominalOf(frequency);
      if (nominal === undefined) {
        faults.push(
          `Line ${line}: the band "${band}" is not a third-octave or octave centre; ` +
            `use ${OCTAVES.join(', ')} Hz or the third octaves between them.`,
        );
        return;
      }
      if (!(level >= LEAST && level <= MOST)) {
        faults.push(`Line ${line}: the value "${value}" must be a number from ${LEAST} to ${MOST} dB.`);
        return;
      }
      const earlier = found.get(nominal);
      if (earlier !== undefined) {
        faults.push(`Line ${line}: the band ${nominal} Hz stands already in line ${earlier.line}; keep one of them.`);
        return;
      }
      found.set(nominal, { value: level, line });
    });
  if (faults.length === 0 && found.size === 0)
    faults.push('The table holds no values; two columns are wanted: the band in Hz and R or D in dB, a line per band.');
  if (faults.length > 0) return { ok: false, faults };
  const bands = [...found.keys()].sort((a, b) => a - b);
  return { ok: true, curve: { bands, values: bands.map((band) => found.get(band)?.value ?? Number.NaN) } };
};
