import type { BoxGeometry } from './boxGeometry.ts';
import { BOX_BANDS } from './boxPlan.ts';
import type { BoxPlan } from './boxPlan.ts';
import type { BoxBand, BoxResult } from './boxResult.ts';
import { boxSteps } from './boxSteps.ts';

/** How a box is to be solved in one call. */
export interface BoxOptions {
  /** h of all bands, or of each, m */
  readonly cellSize: number | ((band: number) => number);
  /** N of all bands, or of each; 24 up to 1.6 kHz and 8 above where not given */
  readonly frequenciesPerBand?: number | ((band: number) => number);
  readonly bands?: readonly number[];
  readonly inside?: boolean;
  /** told of each finished band, lowest first, and how far the work is (0 to 1); false stops it */
  readonly onBand?: (band: BoxBand, fraction: number) => boolean;
}

const usualLines = (band: number): number => (band <= 1600 ? 24 : 8);

const planOf = ({
  cellSize,
  frequenciesPerBand = usualLines,
  bands = BOX_BANDS,
  inside = false,
}: BoxOptions): BoxPlan => ({
  bands,
  inside,
  cellSize: typeof cellSize === 'number' ? () => cellSize : cellSize,
  lines: typeof frequenciesPerBand === 'number' ? () => frequenciesPerBand : frequenciesPerBand,
});

/**
 * Transmission loss of a box in one call; see boxSteps for the method and its validity, and for solving it in pieces.
 * @param geometry plan of the box, m
 * @param options cell size, lines per band, and who is told of each band
 * @returns all bands, or null where onBand has stopped it
 * @throws RangeError as boxSteps
 */
export const solveBox = (geometry: BoxGeometry, options: BoxOptions): BoxResult | null => {
  const steps = boxSteps(geometry, planOf(options));
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    const { band, fraction } = step.value;
    if (band !== null && options.onBand?.(band, fraction) === false) return null;
  }
};
