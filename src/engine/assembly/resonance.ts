import { AIR_BULK_MODULUS, requirePositive } from '../quantities/index.ts';
import type { Assembly } from './assembly.ts';
import { structureOf } from './leaf.ts';

/**
 * Mass-air-mass resonance of two leaves on the air between them: f0 = (1/2π)·√(ρ0c0²·(m1 + m2)/(D·m1·m2)).
 * @param firstMass m1, kg/m², > 0
 * @param secondMass m2, kg/m², > 0
 * @param depth D, m, > 0
 * @returns f0, Hz; a filled cavity resonates up to 15 % lower
 * @throws RangeError when a value is not > 0
 * @validity depth below a quarter wavelength, normal incidence
 * @source Fahy, Sound and Structural Vibration (1985), ch. 4; ISO 12354-1:2017, annex D (with 0.111 MN/m³ instead of 0.142)
 * @example massAirMassResonance(10, 10, 0.1) // 84.8
 */
export const massAirMassResonance = (firstMass: number, secondMass: number, depth: number): number => {
  requirePositive('firstMass', firstMass, 'kg/m²');
  requirePositive('secondMass', secondMass, 'kg/m²');
  requirePositive('depth', depth, 'm');
  return Math.sqrt((AIR_BULK_MODULUS * (firstMass + secondMass)) / (depth * firstMass * secondMass)) / (2 * Math.PI);
};

/** Largest eigenvalues of a chain of masses on springs, by bisection on the number of sign changes. */
const chainFrequencies = (masses: readonly number[], stiffnesses: readonly number[]): number[] => {
  // Sturm count of the mass-normalised tridiagonal matrix: how many ω² lie below the trial
  const below = (trial: number): number => {
    let count = 0;
    let pivot = 1;
    masses.forEach((mass, i) => {
      const left = stiffnesses[i - 1] ?? 0;
      const right = stiffnesses[i] ?? 0;
      const coupling = i === 0 ? 0 : (left * left) / (mass * (masses[i - 1] ?? mass));
      pivot = (left + right) / mass - trial - coupling / (pivot === 0 ? 1e-300 : pivot);
      if (pivot < 0) count += 1;
    });
    return count;
  };
  const most = stiffnesses.reduce(
    (top, s, i) => Math.max(top, 4 * s * (1 / (masses[i] ?? 1) + 1 / (masses[i + 1] ?? 1))),
    0,
  );
  const found: number[] = [];
  for (let n = 1; n < masses.length; n += 1) {
    let low = 0;
    let high = most;
    for (let step = 0; step < 80; step += 1) {
      const middle = (low + high) / 2;
      if (below(middle) > n) high = middle;
      else low = middle;
    }
    found.push(Math.sqrt(low) / (2 * Math.PI));
  }
  return found;
};

/**
 * Resonances of all leaves on all their air springs together, ascending, Hz: two leaves give the one mass-air-mass
 * resonance, three leaves give two.
 * @param assembly layers from the room outwards
 * @returns n − 1 frequencies for n leaves, Hz
 * @validity as massAirMassResonance
 * @source chain of masses and springs, textbook; Fahy, Sound and Structural Vibration (1985), ch. 4
 * @example massAirMassResonances(tripleWall) // two frequencies
 */
export const massAirMassResonances = (assembly: Assembly): readonly number[] => {
  const { leaves, cavities } = structureOf(assembly);
  return chainFrequencies(
    leaves.map((leaf) => leaf.surfaceMass),
    cavities.map((cavity) => AIR_BULK_MODULUS / cavity.depth),
  );
};
