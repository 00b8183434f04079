import type { AngleGrid } from './angleGrid.ts';
import { angularField } from './angularField.ts';
import type { AngularField } from './angularField.ts';
import { fieldLine } from './fieldLine.ts';
import { fieldWorkspace, fillRows, planeRow } from './fieldWorkspace.ts';
import type { Stack } from './stack.ts';
import { radiationRow } from './windowTable.ts';
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
 * Transmission coefficients through a window of finite size, by path, as the mean of τ over the lines of every third
 * octave. More than two leaves: each linked cavity multiplies the whole by 1 + τS/τd of its own pair of leaves.
 * @param stack leaves, gaps and the links of this size
 * @param angular what the stack does whatever its size
 * @param window radiation factors on the same angles
 * @param size sides of the part, m
 * @returns τ per band and path
 * @source window: Villot, Guigou and Gagliardini (2001)
 */
export const throughWindow = (
  stack: Stack,
  angular: AngularField,
  window: WindowTable,
  size: readonly [number, number],
): FieldResult => {
  const { grid, bands } = angular;
  const result = {
    cavity: new Float64Array(bands.length),
    resonant: new Float64Array(bands.length),
    links: new Float64Array(bands.length),
    perimeter: new Float64Array(bands.length),
  };
  const sigma = new Float64Array(grid.count);
  bands.forEach((lines, b) => {
    for (const line of lines) {
      radiationRow(window, line.frequency, sigma);
      const at = fieldLine(stack, line, grid, sigma, size);
      result.cavity[b] = (result.cavity[b] ?? 0) + at.cavity / lines.length;
      result.resonant[b] = (result.resonant[b] ?? 0) + at.resonant / lines.length;
      result.links[b] = (result.links[b] ?? 0) + at.links / lines.length;
      result.perimeter[b] = (result.perimeter[b] ?? 0) + at.perimeter / lines.length;
    }
  });
  return result;
};

/**
 * Transmission coefficients of a stack in a diffuse field. Their sum is the part without its cap.
 * @param stack leaves, gaps and links
 * @param options bands, resolution, window
 * @returns τ per band and path
 * @validity see the layers; three and more leaves with links are an estimate
 * @source angularField, throughWindow
 * @example transmissionCoefficients(stack, options).cavity
 */
export const transmissionCoefficients = (stack: Stack, options: FieldOptions): FieldResult =>
  throughWindow(stack, angularField(stack, options.bands, options.lines, options.grid), options.window, options.size);

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
  const tau = new Float64Array(1);
  fillRows(prepared, grid, frequency);
  planeRow(prepared, grid, frequency, 0, stack.leaves.length - 1, tau);
  return tau[0] ?? 0;
};
