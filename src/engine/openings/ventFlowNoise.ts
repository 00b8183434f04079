import { sectionArea, toLevel } from '../quantities/index.ts';
import type { Section } from '../quantities/index.ts';
import { NOISE_OCTAVES } from '../ratings/index.ts';

const SQUARE_FEET = 10.7639;
const FEET = 3.28084;
const FEET_A_MINUTE = 60 * FEET;

/** Turning vanes of small ducts: how far apart and how long, m. @source common practice: 38 mm apart, 50 mm radius */
const VANES = { apart: 0.038, chord: 0.071 } as const;

/**
 * Sound power of air in a grille: Lw = 10 lg S + 30 lg ξ + 60 lg u − 31.3 (S ft², u ft/s), spread about 48.8·u Hz.
 * @param area S of the face, m², > 0
 * @param loss ξ, its loss coefficient, > 0
 * @param speed u before it, m/s, > 0
 * @returns dB re 1 pW per octave 63 Hz to 8 kHz
 * @validity clean flow towards the grille; ±5 dB by judgement
 * @source Beranek & Vér, Noise and Vibration Control Engineering (1992); ASHRAE (from memory)
 * @example grilleOctaves(0.02, 6, 1)[3] // 7.7
 */
export const grilleOctaves = (area: number, loss: number, speed: number): number[] => {
  const u = speed * FEET;
  const whole = toLevel(area * SQUARE_FEET) + 3 * toLevel(loss) + 6 * toLevel(u) - 31.3;
  const peak = Math.log2((48.8 * u) / 1000);
  return NOISE_OCTAVES.map((octave) => {
    const away = peak - Math.log2(octave / 1000);
    return whole - 5.82 - 0.15 * away - 1.13 * away ** 2;
  });
};

/** A row of vanes that turn the air. */
export interface TurningVanes {
  readonly count: number;
  /** m */
  readonly chord: number;
}

/** As they are built into a duct of a width. @param width in the plane of the bend, m */
export const usualVanes = (width: number): TurningVanes => ({
  count: Math.max(1, Math.round(width / VANES.apart) - 1),
  chord: VANES.chord,
});

/**
 * Spectrum of a bend's noise by the Strouhal number St = f·D/U (below 1 as at 1).
 * With vanes K = −47.5 − 7.69·(lg St)^2.5, without K = −9.22 − 16.48·lg St − 5.05·(lg St)².
 * @source published application guide for laboratory ventilation (2009)
 * @example bendSpectrum(10, false) // -30.75
 */
export const bendSpectrum = (strouhal: number, vaned: boolean): number => {
  const x = Math.log10(Math.max(1, strouhal));
  return vaned ? -47.5 - 7.69 * x ** 2.5 : -9.22 - 16.48 * x - 5.05 * x ** 2;
};

/**
 * Sound power of air in a bend of 90°: Lw = K + 10 lg f + 50 lg U + 10 lg S + 10 lg D + 10 lg n − 107 (U ft/min,
 * S ft², D ft: width of the duct, or chord of its n vanes).
 * @param section of the duct
 * @param speed U, m/s, > 0
 * @param vanes null for a bend without
 * @returns dB re 1 pW per octave 63 Hz to 8 kHz
 * @validity tried on ducts of 0.3 m and more; a smooth bend is quieter; about ±5 dB by judgement
 * @source published application guide for laboratory ventilation (2009): its worked elbow within 1.5 dB
 * @example bendOctaves({ shape: 'round', diameter: 0.3048 }, 7.76, null)[0] // 52.7
 */
export const bendOctaves = (section: Section, speed: number, vanes: TurningVanes | null): number[] => {
  const area = sectionArea(section);
  const length = vanes ? vanes.chord : 2 * Math.sqrt(area / Math.PI);
  const level =
    5 * toLevel(speed * FEET_A_MINUTE) +
    toLevel(area * SQUARE_FEET) +
    toLevel(length * FEET) +
    (vanes ? toLevel(vanes.count) : 0) -
    107;
  return NOISE_OCTAVES.map((octave) => {
    return level + toLevel(octave) + bendSpectrum((octave * length) / speed, vanes !== null);
  });
};

/**
 * Sound power of air along a straight duct: Lw = 10 + 50 lg v + 10 lg S, per octave
 * ΔL = −2 − 26 lg(1.14 + 0.02·f/v).
 * @param area S, m², > 0
 * @param speed v, m/s, > 0
 * @returns dB re 1 pW per octave 63 Hz to 8 kHz
 * @validity smooth duct, whatever its length; 15 dB a doubling of speed in all, more when A-weighted
 * @source published table of duct noise (level); VDI 2081 (2001), spectrum, from memory
 * @example ductOctaves(0.0314, 10)[0] // 40.3
 */
export const ductOctaves = (area: number, speed: number): number[] => {
  const whole = 10 + 5 * toLevel(speed) + toLevel(area);
  return NOISE_OCTAVES.map((octave) => whole - 2 - 26 * Math.log10(1.14 + (0.02 * octave) / speed));
};
