import type { Spectrum } from '../quantities/index.ts';
import { soundTransmissionClass } from './astmE413.ts';
import { outdoorIndoorClass } from './astmE1332.ts';
import { adaptationTerm, weightedReduction } from './iso717_1.ts';
import type { Ratings } from './rating.ts';

/**
 * All single-number ratings of a third-octave curve.
 * @param curve R (or a level difference), dB, per nominal third octave
 * @returns ratings in dB; each null where the curve lacks a band it needs
 * @source ISO 717-1:2020; ASTM E413-16; ASTM E1332-16
 */
export const rateThirdOctaves = (curve: Spectrum): Ratings => ({
  Rw: weightedReduction(curve),
  C: adaptationTerm(curve, 'C'),
  Ctr: adaptationTerm(curve, 'Ctr'),
  C50_3150: adaptationTerm(curve, 'C50_3150'),
  C50_5000: adaptationTerm(curve, 'C50_5000'),
  C100_5000: adaptationTerm(curve, 'C100_5000'),
  Ctr50_3150: adaptationTerm(curve, 'Ctr50_3150'),
  Ctr50_5000: adaptationTerm(curve, 'Ctr50_5000'),
  Ctr100_5000: adaptationTerm(curve, 'Ctr100_5000'),
  STC: soundTransmissionClass(curve),
  OITC: outdoorIndoorClass(curve),
});
