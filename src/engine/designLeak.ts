import { THIRD_OCTAVES, toRatio, toTransmission } from './quantities/index.ts';
import { SPECTRA } from './ratings/index.ts';

/** A wall, and what is played behind it. */
export interface LeakyWall {
  /** R per third octave 25 Hz to 10 kHz, without its vents */
  readonly wallR: readonly number[];
  /** m² */
  readonly wallArea: number;
  /** vents alike in it */
  readonly count: number;
}

/** Share of a third octave in what is played, A-weighted; 0 outside the range. */
export type BandWeights = readonly number[];

const weightsOf = (key: 'C' | 'Ctr50_3150'): BandWeights => {
  const { bands, values } = SPECTRA[key];
  return THIRD_OCTAVES.map((band) => {
    const level = values[bands.indexOf(band)];
    return level === undefined ? 0 : toRatio(level);
  });
};

/** Living noise over 100 Hz to 3.15 kHz: what the station tells as the cost of a vent. @source ISO 717-1:2020, C */
export const LIVING: BandWeights = weightsOf('C');
/** Music rich in bass over 50 Hz to 3.15 kHz. @source ISO 717-1:2020, Ctr,50-3150 */
export const BASS_RICH: BandWeights = weightsOf('Ctr50_3150');

/** Open area as what is played passes it: Σ w·τS, m². */
export const leakOf = (openArea: readonly number[], weights: BandWeights): number =>
  weights.reduce((sum, weight, b) => sum + weight * (openArea[b] ?? 0), 0);

const throughWall = ({ wallR, wallArea }: LeakyWall, weights: BandWeights): number =>
  wallArea * leakOf(wallR.map(toTransmission), weights);

/** What a wall loses by vents that leak so much each: ΔR = 10 lg(1 + n·L/L_wall), dB. */
export const costOfLeak = (leak: number, wall: LeakyWall, weights: BandWeights, count = wall.count): number =>
  10 * Math.log10(1 + (count * leak) / throughWall(wall, weights));

/** What each vent may leak where all of them together may cost the wall so much, m². @param cost dB, > 0 */
export const leakOfCost = (cost: number, wall: LeakyWall, weights: BandWeights): number =>
  ((toRatio(cost) - 1) * throughWall(wall, weights)) / wall.count;
