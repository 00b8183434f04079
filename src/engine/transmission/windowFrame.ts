import { toTransmission } from '../quantities/index.ts';
import type { Structure } from '../assembly/index.ts';

/** RF at 500 Hz with panes 50 mm apart in a window of 1.48 × 1.23 m, dB; its rise per decade of frequency and of depth. */
const LEVEL = 39.4;
const PER_FREQUENCY = 17.5;
const PER_DEPTH = 10;
const [FREQUENCY, DEPTH] = [500, 0.05];
/** Panes nearer to each other than any measured are taken as this far apart, m. */
const NEAREST = 0.006;
/** P/S of that window, 1/m. */
const LABORATORY_EDGE = (2 * (1.48 + 1.23)) / (1.48 * 1.23);

/**
 * What gets past two and more panes through frame, spacers and reveals, as a part of its own beside the panes:
 * RF = 39.4 + 17.5·lg(f/500) + 10·lg(D/50 mm), of the area of the panes; a frame's share goes with P/S. Nearly the 6 dB an
 * octave of a plain mass. It counts where panes far apart would let through less; one pane lets through more anyway.
 * @param structure leaves and cavities
 * @param size sides of the part, m, > 0
 * @param frequency f, Hz, > 0
 * @returns τ of the area of the panes; 0 unless there are two leaves and more, all of glass
 * @validity sealed units and windows in separate frames, closed and sealed as in a laboratory; panes 6 to 200 mm apart
 * @source form: parts side by side, ISO 12354-3:2017, 4.2; figures: engineering judgement, fitted to measured
 *   constructions (tests/reference/tl)
 * @example frameTransmission(structureOf(doubleWindow), [1.48, 1.23], 500) // 1.15e-4 with panes 50 mm apart
 */
export const frameTransmission = (
  { leaves, cavities }: Structure,
  size: readonly [number, number],
  frequency: number,
): number => {
  if (leaves.length < 2 || !leaves.every((leaf) => leaf.glass)) return 0;
  const depth = Math.max(
    NEAREST,
    cavities.reduce((sum, cavity) => sum + cavity.depth, 0),
  );
  const reduction = LEVEL + PER_FREQUENCY * Math.log10(frequency / FREQUENCY) + PER_DEPTH * Math.log10(depth / DEPTH);
  const edge = (2 * (size[0] + size[1])) / (size[0] * size[1]);
  return Math.min(1, (toTransmission(reduction) * edge) / LABORATORY_EDGE);
};
