import type { Spectrum, WorkingLine } from '../../engine/quantities/index.ts';
import { BASS_BANDS, bassReduction } from '../../engine/quantities/index.ts';
import {
  adaptationTerm,
  bandValues,
  ISO_THIRD_OCTAVES,
  outdoorIndoorClass,
  roundTo,
  soundTransmissionClass,
  STC_CONTOUR,
  unroundedOutdoorIndoorClass,
  weightedReduction,
  type ReferenceCurve,
} from '../../engine/ratings/index.ts';
import { figure, signed } from './wording.ts';

/** A figure with the steps that lead to it. */
export interface Figured {
  readonly value: string;
  readonly lines: readonly WorkingLine[];
}

const NOT_RATED: Figured = { value: 'not rated: nothing gets through, or a band is missing', lines: [] };

/** Which bands fall short of the shifted reference, by how much, and the sum. */
const shortfall = (curve: Spectrum, reference: ReferenceCurve, rating: number, parts: number): string => {
  const R = (bandValues(curve, reference.bands) ?? []).map((value) => roundTo(value, parts));
  const short = R.map((value, i) => Math.max(0, (reference.values[i] ?? 0) + rating - reference.at500 - value));
  const sum = short.reduce((total, value) => total + value, 0);
  const named = short.flatMap((value, i) => (value > 0 ? [`${reference.bands[i]} Hz ${figure(value)}`] : []));
  return `at ${rating} dB the bands below the curve lack ${named.join(', ') || 'nothing'}; together ${figure(sum)} dB`;
};

export const weightedFigure = (curve: Spectrum): Figured => {
  const Rw = weightedReduction(curve);
  const [C, Ctr] = [adaptationTerm(curve, 'C'), adaptationTerm(curve, 'Ctr')];
  const [low, lowTr] = [adaptationTerm(curve, 'C50_5000'), adaptationTerm(curve, 'Ctr50_5000')];
  if (Rw === null || C === null || Ctr === null) return NOT_RATED;
  const source = 'ISO 717-1:2020, 4.5 and Annex B';
  const terms = (name: string, range: string, term: number, equation: string): WorkingLine => ({
    what: `${name}: the same curve against the spectrum of ${range}, compared with Rw.`,
    equation,
    numbers: `${name} = ${Rw + term} − ${Rw} = ${signed(term)} dB`,
    source,
  });
  const equation = 'C = −10 lg Σ 10^((Lᵢ − Rᵢ)/10) − Rw';
  return {
    value: `Rw ${Rw} (C ${signed(C)}; Ctr ${signed(Ctr)}) dB`,
    lines: [
      {
        what: 'The reference curve of the standard is moved in steps of 1 dB, as high as the sum of what the bands lack allows; its value at 500 Hz is the rating.',
        equation: 'Σ max(0, Refᵢ + k − Rᵢ) ≤ 32.0 dB, Rw = Ref(500 Hz) + k',
        numbers: shortfall(curve, ISO_THIRD_OCTAVES, Rw, 10),
        source: 'ISO 717-1:2020, 4.4',
      },
      terms('C', 'living noise, 100 Hz to 3.15 kHz', C, equation),
      terms('Ctr', 'noise with much low sound, 100 Hz to 3.15 kHz', Ctr, equation),
      ...(low === null ? [] : [terms('C50-5000', 'living noise, 50 Hz to 5 kHz', low, equation)]),
      ...(lowTr === null ? [] : [terms('Ctr50-5000', 'noise with much low sound, 50 Hz to 5 kHz', lowTr, equation)]),
    ],
  };
};

export const classFigure = (curve: Spectrum): Figured => {
  const STC = soundTransmissionClass(curve);
  if (STC === null) return NOT_RATED;
  const line: WorkingLine = {
    what: 'The contour is moved in steps of 1 dB, as high as the limits allow: 32 dB lacking in all, 8 dB in one band.',
    equation: 'Σ max(0, Contourᵢ + k − Rᵢ) ≤ 32 dB, each ≤ 8 dB, STC = k at 500 Hz',
    numbers: shortfall(curve, STC_CONTOUR, STC, 1),
    source: 'ASTM E413-16, clause 5',
  };
  return { value: `STC ${STC}`, lines: [line] };
};

export const outdoorFigure = (curve: Spectrum): Figured => {
  const [OITC, unrounded] = [outdoorIndoorClass(curve), unroundedOutdoorIndoorClass(curve)];
  if (OITC === null || unrounded === null) return NOT_RATED;
  const line: WorkingLine = {
    what: 'A-weighted level of a standard traffic spectrum before and behind the part, 80 Hz to 4 kHz.',
    equation: 'OITC = 100.13 − 10 lg Σ 10^((Lᵢ − Rᵢ + Aᵢ)/10)',
    numbers: `100.13 − ${figure(100.13 - unrounded, 2)} = ${figure(unrounded, 2)} dB, rounded ${OITC}`,
    source: 'ASTM E1332-16, clause 7',
  };
  return { value: `OITC ${OITC}`, lines: [line] };
};

export const bassFigure = (curve: Spectrum): Figured => {
  const R = bandValues(curve, BASS_BANDS);
  if (R === null) return NOT_RATED;
  const mean = bassReduction(curve);
  const line: WorkingLine = {
    what: 'The energy that gets through in the four bands of kick and bass, averaged; the weakest band weighs most.',
    equation: 'R_bass = −10 lg (¼ Σ 10^(−Rᵢ/10)), i = 50, 63, 80, 100 Hz',
    numbers: `${R.map((value, i) => `${BASS_BANDS[i]} Hz ${figure(value)}`).join(', ')} give ${figure(mean)} dB`,
    source: 'engineering judgement: bands below the range of the ratings, where music is heard through walls',
  };
  return { value: `${figure(mean)} dB from 50 to 100 Hz`, lines: [line] };
};
