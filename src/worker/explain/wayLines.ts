import { bassReduction, toReduction, type Spectrum, type WorkingLine } from '../../engine/quantities/index.ts';
import { soundTransmissionClass, weightedReduction } from '../../engine/ratings/index.ts';
import type { Prediction, TransmissionPath } from '../../engine/transmission/index.ts';
import { figure } from './wording.ts';

type Key = TransmissionPath['key'];
/** Figures of a curve that its ways can be judged by. */
export type JudgedBy = 'Rw' | 'STC' | 'bass';

export const WAY_SOURCES: Readonly<Record<Key, string>> = {
  cavity:
    'transfer matrices, Allard and Atalla (2009), ch. 11; finite size: Villot, Guigou and Gagliardini, J. Sound Vib. 245 (2001)',
  resonant: 'ISO 12354-1:2017, annex B',
  links:
    'line and point impedances: Cremer, Heckl and Petersson (2005); rigid lines: Davy, J. Acoust. Soc. Am. 90 (1991)',
  perimeter: 'as the links, for the plates and edges that all leaves share; fitted to measured constructions',
  frame: 'form: ISO 12354-3:2017, 4.2; figures: engineering judgement, fitted to measured windows',
  cap: 'engineering judgement: fitted to measured constructions',
};

export const WAY_EQUATIONS: Readonly<Record<Key, string>> = {
  cavity: 'τ = Σ_θ w(θ) · τ∞(θ) · σ(θ), mean over the lines of the third octave; R = −10 lg τ',
  resonant: 'τ = (2ρ₀c₀/ωm′)² · (π · f_c/2f) · σ²/η; R = −10 lg τ',
  links: 'τ = ρ₀² · c₀ · ω · V₁ · V₂/(b · |Y|²), of points n · ρ₀² · ω² · V₁ · V₂/(π · |Y|²); R = −10 lg τ',
  perimeter: 'τ = ρ₀² · c₀ · ω · V₁ · V₂/(b · |Y|²), b and Y of the plates; R = −10 lg τ',
  frame: 'R_F = 39.4 + 17 lg(f/500 Hz) + 11 lg(D/50 mm), for a window of 1.48 × 1.23 m; τ goes with edge per area',
  cap: 'τ = 10^(−R_cap/10), the same in every band, of bare masonry rising above 1 kHz; R = −10 lg τ',
};

/** Indices of the bands in which each way lets most through. */
const strongestIn = ({ bands, paths }: Prediction): ReadonlyMap<Key, readonly number[]> => {
  const first = bands.map((_, b) =>
    paths.reduce((most, path) => ((path.tau[b] ?? 0) > (most.tau[b] ?? 0) ? path : most)),
  );
  return new Map(paths.map(({ key }) => [key, first.flatMap((path, b) => (path.key === key ? [b] : []))]));
};

/** "25 to 125, 2500 Hz": neighbouring bands drawn together. */
const rangesOf = (bands: readonly number[], indices: readonly number[]): string => {
  const runs: number[][] = [];
  for (const b of indices) {
    const run = runs.at(-1);
    if (run?.at(-1) === b - 1) run.push(b);
    else runs.push([b]);
  }
  const named = runs.map((run) => {
    const [low, high] = [bands[run[0] ?? 0] ?? 0, bands[run.at(-1) ?? 0] ?? 0];
    return low === high ? `${low}` : `${low} to ${high}`;
  });
  return `${named.join(', ')} Hz`;
};

const rated = (curve: Spectrum, by: JudgedBy): string => {
  if (by === 'bass') return `${figure(bassReduction(curve))} dB from 50 to 100 Hz`;
  const value = by === 'Rw' ? weightedReduction(curve) : soundTransmissionClass(curve);
  return value === null ? 'not rated' : by === 'Rw' ? `Rw ${value} dB` : `STC ${value}`;
};

/**
 * Every way through a make-up: where it lets most through, and what the figure would be with that way shut.
 * @param prediction of the make-up
 * @param by the figure that is being explained
 */
export const wayLines = (prediction: Prediction, by: JudgedBy): readonly WorkingLine[] => {
  const { bands, paths, R } = prediction;
  const strongest = strongestIn(prediction);
  const now = rated({ bands, values: R }, by);
  const carrying = paths.filter(({ tau }) => tau.some((value) => value > 0));
  return carrying.map(({ key, name }) => {
    const most = strongest.get(key) ?? [];
    const without = bands.map((_, b) =>
      carrying.reduce((sum, path) => sum + (path.key === key ? 0 : (path.tau[b] ?? 0)), 0),
    );
    const shut = without.every((rest) => rest > 0)
      ? `${rated({ bands, values: without.map(toReduction) }, by)} with this way shut`
      : 'the only way in some bands';
    return {
      what: `${name}: ${most.length > 0 ? `most of all gets through this way at ${rangesOf(bands, most)}` : 'never the way that lets most through'}.`,
      equation: WAY_EQUATIONS[key],
      numbers: `${now} as it stands; ${shut}`,
      source: WAY_SOURCES[key],
    };
  });
};

/** The way that lets most through at a band, in words. */
export const strongestWay = ({ bands, paths }: Prediction, band: number): string => {
  const b = bands.indexOf(band);
  return paths.reduce((most, path) => ((path.tau[b] ?? 0) > (most.tau[b] ?? 0) ? path : most)).name;
};
