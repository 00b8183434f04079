import type { BesselTable } from './besselTable.ts';
import { gaussLegendre } from './gaussLegendre.ts';
import { windowShape } from './windowShape.ts';

/** k0·(short side) from which the integrand is split into its slow half beyond a few wavelengths */
export const SPLIT = 30;
export const SPLIT_FROM = 12;
const PANEL = gaussLegendre(8, 0, 1);

export interface Samples {
  /** x = k0·R and the weight with everything that does not depend on S */
  readonly x: number[];
  readonly weight: number[];
}

/** Quadrature points in x with w(R) and k0/(2πab) in the weight; panels end at the kinks of w. */
export const samples = (k: number, a: number, b: number, from: number, panelEnd: (x: number) => number): Samples => {
  const x: number[] = [];
  const weight: number[] = [];
  const end = k * Math.hypot(a, b);
  let start = from;
  for (const kink of [k * b, k * a, end]) {
    while (start < kink - 1e-9) {
      const stop = Math.min(kink, panelEnd(start));
      PANEL.nodes.forEach((node, i) => {
        const here = start + (stop - start) * node;
        x.push(here);
        weight.push(((PANEL.weights[i] ?? 0) * (stop - start) * windowShape(here / k, a, b)) / (2 * Math.PI * a * b));
      });
      start = stop;
    }
  }
  return { x, weight };
};

/** 1 below SPLIT_FROM, 0 above SPLIT, smooth between. */
export const fade = (x: number): number => {
  if (x <= SPLIT_FROM) return 1;
  if (x >= SPLIT) return 0;
  const t = (x - SPLIT_FROM) / (SPLIT - SPLIT_FROM);
  return 1 / (1 + Math.exp(1 / (1 - t) - 1 / t));
};

/** Σ weight·sin x·J0(x·S). */
export const nearSum = (points: Samples, S: number, table: BesselTable): number => {
  const { values, steps } = table;
  let sum = 0;
  for (let i = 0; i < points.x.length; i += 1) {
    const at = (points.x[i] ?? 0) * S * steps;
    const cell = Math.floor(at);
    const low = values[cell] ?? 0;
    sum += (points.weight[i] ?? 0) * (low + (at - cell) * ((values[cell + 1] ?? 0) - low));
  }
  return sum;
};

/**
 * Σ weight·½·Im[e^(jx)·H0(2)(xS)]: the half of sin x·J0(xS) that does not oscillate near grazing; the other half
 * leaves only its end, which the fade has taken away.
 */
export const slowSum = (points: Samples, S: number): number => {
  let sum = 0;
  for (let i = 0; i < points.x.length; i += 1) {
    const x = points.x[i] ?? 0;
    const z = x * S;
    const q = 1 / z;
    // Hankel's expansion as modulus and phase: A&S 9.2.28 and 9.2.29
    const size = 0.5 * Math.sqrt((2 / Math.PI) * q) * (1 - q * q * (0.0625 - 0.10352 * q * q));
    const phase = x - z + Math.PI / 4 + q * (0.125 - 0.0651 * q * q);
    sum += (points.weight[i] ?? 0) * size * Math.sin(phase);
  }
  return sum;
};
