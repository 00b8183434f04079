import { fault, type Fault, type Path } from '../fault.ts';
import type { MeasuredEntry } from '../schema.ts';

/** Third-octave number of a frequency on the base-ten grid: 0 at 1 kHz. @source IEC 61260-1:2014, 5.2 */
const bandOf = (frequency: number): number => 10 * Math.log10(frequency / 1000);

/** One quantity, a figure for each band, bands that are third-octave centres and ascend. */
export const measuredFaults = (measured: MeasuredEntry, path: Path): readonly Fault[] => {
  const { bands_Hz: bands, R_dB: R, Dne_dB: Dne } = measured;
  if ((R === undefined) === (Dne === undefined))
    return [
      fault(
        path,
        measured,
        'exactly one of R_dB and Dne_dB',
        R ? 'Keep the one that the test report gives.' : 'Add the figures of the test report.',
      ),
    ];
  const faults: Fault[] = [];
  const key = R ? 'R_dB' : 'Dne_dB';
  const values = R ?? Dne ?? [];
  if (values.length !== bands.length)
    faults.push(
      fault(
        [...path, key],
        values,
        `as many figures as there are bands, ${bands.length}`,
        'Give one figure for each band of bands_Hz.',
      ),
    );
  const astray = bands.findIndex((band) => Math.abs(bandOf(band) - Math.round(bandOf(band))) > 0.2);
  if (astray >= 0)
    faults.push(
      fault(
        [...path, 'bands_Hz', astray],
        bands[astray],
        'the centre of a third-octave band, such as 100, 125 or 160 Hz',
        'Write the band as the test report names it.',
      ),
    );
  const backwards = bands.findIndex(
    (band, i) => i > 0 && Math.round(bandOf(band)) <= Math.round(bandOf(bands[i - 1] ?? 0)),
  );
  if (backwards > 0)
    faults.push(
      fault(
        [...path, 'bands_Hz', backwards],
        bands[backwards],
        `a band above the one before it, ${bands[backwards - 1]} Hz`,
        'Put the bands in ascending order, each once.',
      ),
    );
  return faults;
};
