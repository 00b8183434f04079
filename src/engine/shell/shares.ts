import type { Spectrum } from '../quantities/index.ts';
import { THIRD_OCTAVES, toRatio } from '../quantities/index.ts';
import { bandValues } from '../ratings/index.ts';

const LOWEST = 50;
const HIGHEST = 5000;

/**
 * Energy of the source per band, within the range in which shares are weighed (50 Hz to 5 kHz), else 0.
 * @param source level per third octave 25 Hz to 10 kHz, dB
 * @returns relative energy E_b per band, largest 1
 * @throws RangeError where the source lacks a band
 */
export const sourceEnergy = (source: Spectrum): number[] => {
  const levels = bandValues(source, THIRD_OCTAVES);
  if (levels === null)
    throw new RangeError('source must have a finite level in each third octave of 25 Hz to 10 kHz, got a gap');
  const inside = (band: number | undefined): boolean => band !== undefined && band >= LOWEST && band <= HIGHEST;
  const highest = Math.max(...levels.filter((_, i) => inside(THIRD_OCTAVES[i])));
  return levels.map((level, i) => (inside(THIRD_OCTAVES[i]) ? toRatio(level - highest) : 0));
};

/** Σ over bands of S·τ·E: what gets out, in relative units. @param energy E_b as sourceEnergy gives it */
export const escaping = (openArea: readonly number[], energy: readonly number[]): number =>
  openArea.reduce((sum, passed, b) => sum + passed * (energy[b] ?? 0), 0);

/** Σ over parts of S·τ per band, m². */
export const totalOpenArea = (parts: readonly { readonly openArea: readonly number[] }[]): number[] =>
  THIRD_OCTAVES.map((_, b) => parts.reduce((sum, part) => sum + (part.openArea[b] ?? 0), 0));

/** A share of a whole, 0 where the whole is nothing. */
export const shareOf = (part: number, whole: number): number => (whole > 0 ? part / whole : 0);
