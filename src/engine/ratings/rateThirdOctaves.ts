import type { Spectrum } from '../quantities/index.ts';
import { soundTransmissionClass } from './astmE413.ts';
import { outdoorIndoorClass } from './astmE1332.ts';
import { adaptationTerm, weightedReduction } from './iso717_1.ts';
import { bandWidth } from './bandWidth.ts';
import type { Ratings } from './rating.ts';

/**
 * All single-number ratings of a third-octave curve.
 * @param curve R (or a level difference), dB, per nominal third octave
 * @returns ratings in dB; each null where the curve lacks a band it needs
 * @source ISO 717-1:2020; ASTM E413-16; ASTM E1332-16
 */
export const rateThirdOctaves = (curve: Spectrum): Ratings => {
  const Rw = weightedReduction(curve);
  return {
    Rw,
    C: adaptationTerm(curve, 'C', Rw),
    Ctr: adaptationTerm(curve, 'Ctr', Rw),
    C50_3150: adaptationTerm(curve, 'C50_3150', Rw),
    C50_5000: adaptationTerm(curve, 'C50_5000', Rw),
    C100_5000: adaptationTerm(curve, 'C100_5000', Rw),
    Ctr50_3150: adaptationTerm(curve, 'Ctr50_3150', Rw),
    Ctr50_5000: adaptationTerm(curve, 'Ctr50_5000', Rw),
    Ctr100_5000: adaptationTerm(curve, 'Ctr100_5000', Rw),
    STC: soundTransmissionClass(curve),
    OITC: outdoorIndoorClass(curve),
  };
};

const UNRATED: Ratings = {
  Rw: null,
  C: null,
  Ctr: null,
  C50_3150: null,
  C50_5000: null,
  C100_5000: null,
  Ctr50_3150: null,
  Ctr50_5000: null,
  Ctr100_5000: null,
  STC: null,
  OITC: null,
};

/**
 * All ratings of a curve in third octaves or octaves. Octaves give Rw, C and Ctr only: the rest needs third octaves.
 * @param curve R (or a level difference), dB, per nominal band, ascending
 * @returns ratings in dB; each null where the curve lacks a band it needs
 * @source ISO 717-1:2020, 4.4 (octave form for field measurements)
 */
export const rateCurve = (curve: Spectrum): Ratings =>
  bandWidth(curve.bands) === 'third'
    ? rateThirdOctaves(curve)
    : {
        ...UNRATED,
        Rw: weightedReduction(curve, 'octave'),
        C: adaptationTerm(curve, 'octaveC'),
        Ctr: adaptationTerm(curve, 'octaveCtr'),
      };

/** Ratings of something through which nothing is known or nothing gets: all null. */
export const unrated = (): Ratings => UNRATED;
