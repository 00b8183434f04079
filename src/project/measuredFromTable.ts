import { parseCurve } from '../engine/openings/index.ts';
import type { MeasuredEntry } from './schema.ts';

/** A laboratory curve as the document keeps it, or what is wrong with the table it was to be read from. */
export type MeasuredRead =
  { readonly ok: true; readonly measured: MeasuredEntry } | { readonly ok: false; readonly faults: readonly string[] };

/** Fewer bands than these say nothing about a part. */
const LEAST_BANDS = 3;

/**
 * Reads a pasted or typed table (band in Hz and dB, a line per band) as a measured curve.
 * @param quantity R of the part on its own area, or Dn,e of a small element
 * @param source whose report, which test; may be empty
 */
export const measuredFromTable = (table: string, quantity: 'R' | 'Dne', source: string): MeasuredRead => {
  const read = parseCurve(table);
  if (!read.ok) return read;
  const { bands, values } = read.curve;
  if (bands.length < LEAST_BANDS)
    return {
      ok: false,
      faults: [
        `The table holds ${bands.length} ${bands.length === 1 ? 'band' : 'bands'}; at least ${LEAST_BANDS} are needed. Test reports give 16 or more from 100 Hz to 3150 Hz.`,
      ],
    };
  const text = source.trim();
  return {
    ok: true,
    measured: {
      bands_Hz: [...bands],
      ...(quantity === 'R' ? { R_dB: [...values] } : { Dne_dB: [...values] }),
      ...(text === '' ? {} : { source: text }),
    },
  };
};

/** A measured curve as the table from which it could be read again. */
export const tableOfMeasured = (measured: MeasuredEntry): string => {
  const values = measured.R_dB ?? measured.Dne_dB ?? [];
  return measured.bands_Hz.map((band, i) => `${band}\t${values[i] ?? ''}`).join('\n');
};
