import { massAirMassResonance, structureOf } from '../assembly/index.ts';
import type { Assembly } from '../assembly/index.ts';
import { THIRD_OCTAVES, toReduction, toTransmission } from '../quantities/index.ts';
import { capTransmission } from './cap.ts';
import { frameTransmission } from './windowFrame.ts';
import { laboratorySize } from './laboratory.ts';
import { leafStiffness } from './leafStiffness.ts';
import { cavityDepth } from './secondMethodCavity.ts';
import { doubleLeafReduction } from './secondMethodDoubleLeaf.ts';
import { monolithicReduction } from './secondMethodMonolithic.ts';
import type { Stack } from './stack.ts';
import { stackOf } from './stackOf.ts';

/** A part predicted by another school than the one used throughout, for comparison. */
export interface SecondMethod {
  readonly name: string;
  readonly source: string;
  /** nominal third octaves 25 Hz to 10 kHz */
  readonly bands: readonly number[];
  /** dB */
  readonly R: readonly number[];
  /** per band: null, or why this method does not hold there */
  readonly outside: readonly (string | null)[];
}

/** R with what gets past it in a laboratory, τ: seams, seals, window frames, which neither method predicts. */
const capped = (R: number, beside: number): number => toReduction(Math.min(1, toTransmission(R) + beside));

const LOW = 'Below 100 Hz a wall has too few resonances for this method.';

const monolithic = (
  stack: Stack,
  size: readonly [number, number],
  cap: (band: number) => number,
): SecondMethod | null => {
  const [leaf] = stack.leaves;
  const fc = leaf?.criticalFrequency;
  if (!leaf || fc === null || fc === undefined) return null;
  return {
    name: 'forced and free waves of one leaf',
    source: 'ISO 12354-1:2017, annex B',
    bands: THIRD_OCTAVES,
    R: THIRD_OCTAVES.map((band) => {
      const B = leafStiffness(leaf, band);
      const element = {
        surfaceMass: leaf.mass,
        criticalFrequency: fc,
        lossFactor: B.re > 0 ? B.im / B.re : 0.01,
        wallImpedance: leaf.wallImpedance,
        size,
      };
      return capped(monolithicReduction(element, band), cap(band));
    }),
    outside: THIRD_OCTAVES.map((band) => (band < 100 ? LOW : null)),
  };
};

/**
 * The same part by another method: homogeneous single leaves after ISO 12354-1 annex B, double leaves in closed form.
 * Leaves, frames and the seams of a laboratory are the same as in the first method.
 * @param assembly layers from the room outwards
 * @param size sides, m; a laboratory's when absent
 * @returns R per band with the bands in which the method does not hold; null where there is no second method: a limp
 *   single leaf, three leaves and more
 * @validity see monolithicReduction and doubleLeafReduction
 * @source ISO 12354-1:2017, annex B; Sharp 1978; Craik and Smith 2000
 * @example secondMethod(wall)?.R
 */
export const secondMethod = (assembly: Assembly, size = laboratorySize(assembly)): SecondMethod | null => {
  const structure = structureOf(assembly);
  const stack = stackOf(structure, size);
  const [first, second] = stack.leaves;
  const [gap] = stack.gaps;
  const cap = (band: number): number => capTransmission(structure, band);
  if (stack.leaves.length === 1) return monolithic(stack, size, cap);
  if (stack.leaves.length !== 2 || !first || !second || !gap) return null;
  const resonance = massAirMassResonance(first.mass, second.mass, cavityDepth(gap.layers));
  const wall = { first, gap, second, size, resonance };
  return {
    name: 'closed form across, energy flow along the frame',
    source: 'Sharp (1978); ISO 12354-1, annex B; Craik and Smith (2000)',
    bands: THIRD_OCTAVES,
    R: THIRD_OCTAVES.map((band) =>
      capped(doubleLeafReduction(wall, band), cap(band) + frameTransmission(structure, size, band)),
    ),
    outside: THIRD_OCTAVES.map((band) =>
      band < 2 * resonance
        ? `Within an octave of the mass-air-mass resonance, ${Math.round(resonance)} Hz, this method does not hold: it knows no dip there.`
        : band < 100
          ? LOW
          : null,
    ),
  };
};

/** Difference from which two methods contradict each other, dB. @source engineering judgement: above the spread of both */
export const CONTRADICTION = 5;

/** Bands in which methods are compared, Hz. */
const [LEAST, MOST] = [100, 3150];

/** A band in which two methods are more than 5 dB apart. */
export interface Contradiction {
  readonly band: number;
  /** second less first, dB */
  readonly difference: number;
  /** why the second method does not hold there; null where it should */
  readonly outside: string | null;
}

/**
 * Where the second method contradicts the first: more than 5 dB apart, 100 Hz to 3.15 kHz.
 * @param R first method, dB per band
 * @param second second method over the same bands
 */
export const contradictions = (R: readonly number[], second: SecondMethod): readonly Contradiction[] =>
  second.bands.flatMap((band, i) => {
    const difference = (second.R[i] ?? NaN) - (R[i] ?? NaN);
    if (band < LEAST || band > MOST || !(Math.abs(difference) > CONTRADICTION)) return [];
    return [{ band, difference, outside: second.outside[i] ?? null }];
  });
