import { ACCURACY_RECORD } from './accuracyRecord.ts';

const signed = (dB: number): string => `${dB < 0 ? '\u2212' : '+'}${Math.abs(dB).toFixed(1)}`;

/**
 * What measurements there are of a class of construction at 50, 63 and 80 Hz, in words; their lack said plainly.
 * @param kind construction class
 * @source tests/reference/tl (measured record)
 * @example lowEvidence('stud wall: timber, filled') // 'No measured part of the kind …'
 */
export const lowEvidence = (kind: string): string => {
  const low = ACCURACY_RECORD[kind]?.low ?? null;
  if (low === null)
    return `No measured part of the kind “${kind}” was at hand below 100 Hz: here the figure is theory alone.`;
  const [count, bias, deviation] = low;
  return count === 1
    ? `Of the kind “${kind}” one figure was at hand at 63 Hz: predicted less measured ${signed(bias)} dB. That is next to nothing.`
    : `Of the kind “${kind}” ${count} figures were at hand at 63 Hz: predicted less measured ${signed(bias)} dB on average, scattering by ${deviation.toFixed(1)} dB. That is little.`;
};
