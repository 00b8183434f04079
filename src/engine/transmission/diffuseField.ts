import { exactCentre } from '../quantities/index.ts';
import type { AngleGrid } from './angleGrid.ts';
import { fieldLine } from './fieldLine.ts';
import { diffuseTransmission, fieldWorkspace, fillRows } from './fieldWorkspace.ts';
import type { Stack } from './stack.ts';
import type { WindowTable } from './windowTable.ts';

export interface FieldOptions {
  /** nominal third octaves, Hz */
  readonly bands: readonly number[];
  /** lines in every band */
  readonly lines: number;
  readonly grid: AngleGrid;
  readonly window: WindowTable;
  /** sides of the part, m: where the free waves of a single leaf run */
  readonly size: readonly [number, number];
}

/** Transmission coefficients by path, per band. Their sum is the part without its cap. */
export interface FieldResult {
  /** forced, through leaves and cavities */
  readonly cavity: Float64Array;
  /** free waves of a single leaf and the thick wall's limit */
  readonly resonant: Float64Array;
  readonly links: Float64Array;
  readonly perimeter: Float64Array;
}

/**
 * Transmission coefficients of a stack in a diffuse field through a window of finite size, by path, as the mean of τ
 * over the lines of every third octave. More than two leaves: each linked cavity multiplies the whole by
 * 1 + τS/τd of its own pair of leaves.
 * @param stack leaves, gaps and links
 * @param options bands, resolution, window
 * @returns τ per band and path
 * @validity see the layers; three and more leaves with links are an estimate
 * @source transfer matrices: Allard and Atalla (2009), ch. 11; window: Villot, Guigou and Gagliardini (2001)
 * @example transmissionCoefficients(stack, options).cavity
 */
export const transmissionCoefficients = (stack: Stack, options: FieldOptions): FieldResult => {
  const prepared = fieldWorkspace(stack, options.grid.count);
  const count = options.bands.length;
  const result = {
    cavity: new Float64Array(count),
    resonant: new Float64Array(count),
    links: new Float64Array(count),
    perimeter: new Float64Array(count),
  };
  options.bands.forEach((band, b) => {
    const centre = exactCentre(band);
    for (let i = 0; i < options.lines; i += 1) {
      const frequency = centre * 10 ** (((i + 0.5) / options.lines - 0.5) / 10);
      const at = fieldLine(prepared, options, frequency);
      result.cavity[b] = (result.cavity[b] ?? 0) + at.cavity / options.lines;
      result.resonant[b] = (result.resonant[b] ?? 0) + at.resonant / options.lines;
      result.links[b] = (result.links[b] ?? 0) + at.links / options.lines;
      result.perimeter[b] = (result.perimeter[b] ?? 0) + at.perimeter / options.lines;
    }
  });
  return result;
};

/** τ∞ of a stack at one frequency and angle. @source as transmissionCoefficients */
export const planeWaveTransmission = (stack: Stack, frequency: number, angle: number): number => {
  const sine = Math.sin(angle);
  const one = (value: number): Float64Array => Float64Array.of(value);
  const grid: AngleGrid = {
    count: 1,
    sine: one(sine),
    sine2: one(sine * sine),
    cosine: one(Math.cos(angle)),
    transmission: one(1),
    velocity: one(1),
  };
  const prepared = fieldWorkspace(stack, 1);
  prepared.sigma.fill(1);
  fillRows(prepared, grid, frequency);
  diffuseTransmission(prepared, grid, frequency, 0, stack.leaves.length - 1);
  return prepared.tau[0] ?? 0;
};
