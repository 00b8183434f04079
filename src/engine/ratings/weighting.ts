import type { Spectrum } from '../quantities/index.ts';
import { THIRD_OCTAVES } from '../quantities/index.ts';

/** A-weighting at the nominal third octaves 25 Hz to 10 kHz, dB. @source IEC 61672-1:2013, Table 3 */
export const A_WEIGHTING: Spectrum = {
  bands: THIRD_OCTAVES,
  values: [
    -44.7, -39.4, -34.6, -30.2, -26.2, -22.5, -19.1, -16.1, -13.4, -10.9, -8.6, -6.6, -4.8, -3.2, -1.9, -0.8, 0, 0.6, 1,
    1.2, 1.3, 1.2, 1, 0.5, -0.1, -1.1, -2.5,
  ],
};
