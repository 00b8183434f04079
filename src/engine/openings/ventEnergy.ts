import { mikiFluid } from '../materials/index.ts';
import {
  AIR_IMPEDANCE,
  bandNumber,
  complex,
  exactCentre,
  over,
  plus,
  scaled,
  sectionArea,
  sectionPerimeter,
  squaredModulus,
  times,
} from '../quantities/index.ts';
import { SOUND_SPEED, toTransmission } from '../quantities/index.ts';
import type { Section } from '../quantities/index.ts';
import { ductWavenumber, lossRate } from './ductMode.ts';
import { elbowLoss } from './ventElbow.ts';
import type { VentElement, VentLining } from './ventElement.ts';
import type { BoxSound } from './ventBoxSound.ts';

/** A straight lined leg never shows more, dB. @source engineering judgement: what passes in its walls */
const MOST_PER_LEG = 25;

/** cot of a complex number with Im ≤ 0. */
const cotangent = ({ re, im }: { re: number; im: number }) => {
  if (im < -20) return complex(0, 1);
  const bottom = Math.cosh(2 * im) - Math.cos(2 * re);
  return complex(Math.sin(2 * re) / bottom, -Math.sinh(2 * im) / bottom);
};

/**
 * Share of sound that a lining on a rigid wall absorbs at normal incidence: α = 4·Re z/|1 + z|², z = −jZc·cot(kt)/ρ0c0.
 * @param frequency Hz, > 0
 * @param lining m, Pa·s/m²
 * @returns α, 0 to 1
 * @source Miki (1990); layer on a rigid wall
 * @example liningAbsorption(1000, { thickness: 0.05, airflowResistivity: 10_000 }) // 0.88
 */
export const liningAbsorption = (frequency: number, lining: VentLining): number => {
  const { density, wavenumber } = mikiFluid(frequency, lining.airflowResistivity);
  const characteristic = over(scaled(density, 2 * Math.PI * frequency), wavenumber);
  const surface = times(complex(0, -1), times(characteristic, cotangent(scaled(wavenumber, lining.thickness))));
  const z = scaled(surface, 1 / AIR_IMPEDANCE);
  return Math.max(0, (4 * z.re) / squaredModulus(plus(complex(1), z)));
};

type Lined = Extract<VentElement, { kind: 'duct' | 'bend' }>;

const widthOf = (element: Lined): number =>
  element.section.shape === 'round'
    ? element.section.diameter
    : Math.max(element.section.width, element.section.height);

/**
 * Sabine's loss of a duct lined all round, 1.05·α^1.4·P/S: what a beam of sound leaves.
 * @param absorption α of the lining, 0 to 1
 * @param section clear
 * @returns dB/m
 * @validity from where the duct is as wide as the wavelength it only bounds the least mode
 * @source Sabine (1940)
 * @example sabineRate(0.5, { shape: 'rectangular', width: 0.1, height: 0.1 }) // 15.9
 */
export const sabineRate = (absorption: number, section: Section): number =>
  (1.05 * absorption ** 1.4 * sectionPerimeter(section)) / sectionArea(section);

const beamRate = ({ lining, section }: Lined, frequency: number): number =>
  lining === null ? Infinity : sabineRate(liningAbsorption(frequency, lining), section);

const legLoss = (element: Lined, frequency: number, length: number): number => {
  const rate = lossRate(ductWavenumber(frequency, element.section, element.lining));
  const wide = widthOf(element) > SOUND_SPEED / frequency;
  return Math.min(MOST_PER_LEG, (wide ? Math.min(rate, beamRate(element, frequency)) : rate) * length);
};

/**
 * Power that one piece lets pass in a band when nothing is thrown back: lining by its rate, bends by the elbow table,
 * boxes by all their modes.
 * @param element the piece
 * @param sound of the box, for a box
 * @param band nominal third octave, Hz
 * @returns 0 to 1
 * @validity above the duct's cut-on; below it bends take nothing
 * @source least attenuated mode, not beyond Sabine's rate once the duct is wider than the wavelength; elbow tables
 */
export const pieceTransmission = (element: VentElement, sound: BoxSound | null, band: number): number => {
  const frequency = exactCentre(band);
  switch (element.kind) {
    case 'box':
      return sound ? atBand(sound, band) : 1;
    case 'duct':
      return toTransmission(legLoss(element, frequency, element.length));
    case 'bend': {
      const lined = element.lining !== null;
      const vaned = element.form === 'vaned';
      const mitred = lined ? (vaned ? 'vanedLined' : 'lined') : vaned ? 'vaned' : 'bare';
      const form = element.form === 'mitred' || vaned ? mitred : lined ? 'lined' : 'round';
      const turn = (elbowLoss(frequency, widthOf(element), form) * Math.min(90, element.angle)) / 90;
      return toTransmission(turn + legLoss(element, frequency, widthOf(element)));
    }
    default:
      return 1;
  }
};

/** Of a box, held at its ends beyond 50 Hz to 5 kHz. */
const atBand = ({ bands, transmission }: BoxSound, band: number): number => transmission[nearestBand(bands, band)] ?? 1;

/** Place of a band in a list, or of the nearest end. */
export const nearestBand = (bands: readonly number[], band: number): number => {
  const first = bandNumber(bands[0] ?? band);
  return Math.min(bands.length - 1, Math.max(0, bandNumber(band) - first));
};
