import type { Spectrum } from '../engine/quantities/index.ts';
import { contourRw, contourSTC } from '../engine/ratings/index.ts';

/** The rating contours of any curve in their final position, for drawing beside it. */
export const contours = (curve: Spectrum): { readonly Rw: Spectrum | null; readonly STC: Spectrum | null } => ({
  Rw: contourRw(curve),
  STC: contourSTC(curve),
});
