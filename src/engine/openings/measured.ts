import type { Spectrum } from '../quantities/index.ts';
import { THIRD_OCTAVES, bandNumber } from '../quantities/index.ts';
import { bandWidth } from '../ratings/index.ts';

/** A laboratory curve brought to the bands of every prediction. */
export interface BroughtCurve {
  /** dB, per third octave 25 Hz to 10 kHz */
  readonly values: readonly number[];
  /** per band: null where measured, otherwise how the value came about */
  readonly extrapolated: readonly (string | null)[];
}

/** Mass law: 6 dB per octave. */
const PER_THIRD = 2;

const requireCurve = ({ bands, values }: Spectrum): void => {
  if (bands.length === 0) throw new RangeError('measured curve must have at least 1 band, got 0');
  if (bands.length !== values.length)
    throw new RangeError(`measured curve must have one value per band, got ${values.length} for ${bands.length} bands`);
  bands.forEach((band, i) => {
    if (i > 0 && !(bandNumber(band) > bandNumber(bands[i - 1] ?? band)))
      throw new RangeError(`bands of a measured curve must ascend, got ${band} Hz after ${bands[i - 1]} Hz`);
    if (!Number.isFinite(values[i]))
      throw new RangeError(`measured value at ${band} Hz must be a finite number, got ${String(values[i])}`);
  });
};

/** Each octave becomes its three third octaves at the same value, so that their energy mean is the octave's. */
const toThirds = ({ bands, values }: Spectrum): Map<number, number> => {
  const reach = bandWidth(bands) === 'octave' ? [-1, 0, 1] : [0];
  const thirds = new Map<number, number>();
  bands.forEach((band, i) => {
    for (const step of reach) thirds.set(bandNumber(band) + step, values[i] ?? 0);
  });
  return thirds;
};

/**
 * A measured curve on the third octaves 25 Hz to 10 kHz. Octaves are spread over their thirds; bands below the lowest
 * fall by 6 dB per octave (mass law), but not below 0 dB; bands above the highest hold its value; gaps are bridged by
 * a straight line over the band number.
 * @param curve R or Dn,e, dB, per nominal third octave or octave, ascending
 * @returns values and, for each band not measured, the reason
 * @throws RangeError for a curve without bands, with bands out of order or values that are not finite
 * @validity what is not measured is a guess and marked so
 * @source slope of the mass law: EN 12354-1:2000, Annex B; the rest engineering judgement
 * @example bringToThirdOctaves({ bands: [100, 125], values: [20, 22] }).values[5] // 18, at 80 Hz
 */
export const bringToThirdOctaves = (curve: Spectrum): BroughtCurve => {
  requireCurve(curve);
  const known = toThirds(curve);
  const numbers = [...known.keys()];
  const lowest = Math.min(...numbers);
  const highest = Math.max(...numbers);
  const least = known.get(lowest) ?? 0;
  const lowestName = `${curve.bands[0]} Hz`;
  const highestName = `${curve.bands.at(-1)} Hz`;
  const brought = THIRD_OCTAVES.map((band): readonly [number, string | null] => {
    const n = bandNumber(band);
    const measured = known.get(n);
    if (measured !== undefined) return [measured, null];
    if (n < lowest) {
      const fallen = Math.max(least - PER_THIRD * (lowest - n), Math.min(0, least));
      return [fallen, `Not measured: carried down from ${lowestName} at 6 dB per octave.`];
    }
    if (n > highest) return [known.get(highest) ?? 0, `Not measured: held at the value of ${highestName}.`];
    const below = Math.max(...numbers.filter((one) => one < n));
    const above = Math.min(...numbers.filter((one) => one > n));
    const [from, to] = [known.get(below) ?? 0, known.get(above) ?? 0];
    return [from + ((to - from) * (n - below)) / (above - below), 'Not measured: between its neighbours.'];
  });
  return { values: brought.map(([value]) => value), extrapolated: brought.map(([, reason]) => reason) };
};

/** Reference absorption area of Dn,e, m². @source ISO 10140-2:2010, 3.2 */
export const REFERENCE_AREA = 10;

/**
 * Sound reduction index of a small element on its own area: S·τ = A0·10^(−Dn,e/10), so R = Dn,e + 10 lg(S/A0).
 * @param Dne element normalised level difference, dB
 * @param area S, m², > 0
 * @returns R, dB
 * @source EN 12354-3:2000, 4; ISO 10140-2:2010 (A0 = 10 m²)
 * @example smallElementReduction(38, 11.3) // 38.53
 */
export const smallElementReduction = (Dne: number, area: number): number =>
  Dne + 10 * Math.log10(area / REFERENCE_AREA);
