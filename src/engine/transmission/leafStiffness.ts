import { SOUND_SPEED, complex, modulus } from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';
import { criticalFrequency } from '../materials/index.ts';
import type { LeafModel } from './stack.ts';
import { sandwichStiffness } from './sandwichStiffness.ts';

/**
 * Loss that a leaf gains in place with frequency. Masonry in a laboratory wall: Δη = X/√f. Panes in gaskets or putty:
 * Δη up to the critical frequency, Δη·fc/f above it. Gypsum boards: Δη·(f/fc − 1) above it.
 * @param leaf kind of edge
 * @param frequency f, Hz, > 0
 * @returns Δη, ≥ 0
 * @source masonry: see MASONRY_EDGE_LOSS; gaskets: engineering judgement, octave curves of panes from 4 to 25 mm above
 *   coincidence; boards: engineering judgement, octave curves of walls recover faster above coincidence than with a
 *   constant loss (tests/reference/tl)
 */
export const edgeLossOf = (leaf: Pick<LeafModel, 'edgeLoss'>, frequency: number): number => {
  const edge = leaf.edgeLoss;
  if (edge === null) return 0;
  if (edge.kind === 'masonry') return edge.atOneHertz / Math.sqrt(frequency);
  const ratio = frequency / edge.criticalFrequency;
  return edge.lossFactor * (edge.kind === 'board' ? Math.max(0, ratio - 1) : Math.min(1, 1 / ratio));
};

const atWavenumber = (leaf: Omit<LeafModel, 'criticalFrequency'>, frequency: number, squared: number): Complex => {
  const edge = edgeLossOf(leaf, frequency);
  let re = 0;
  let im = 0;
  for (const plate of leaf.plates) {
    re += plate.bending;
    im += plate.bendingLoss + edge * plate.bending;
  }
  for (const sandwich of leaf.sandwiches) {
    const B = sandwichStiffness(sandwich, frequency, squared);
    re += B.re;
    im += B.im + edge * B.re;
  }
  return complex(re, im);
};

/**
 * Complex bending stiffness of a whole leaf for its own free bending wave, kB⁴ = ω²·m/|B(kB)|.
 * @param leaf model
 * @param frequency f, Hz, > 0
 * @returns B, N·m; zero for a limp leaf
 * @validity below the frequencies where shear dominates
 * @source Ross, Ungar and Kerwin (1959), evaluated at the free wavenumber
 * @example leafStiffness(leaf, 1000).re
 */
export const leafStiffness = (leaf: Omit<LeafModel, 'criticalFrequency'>, frequency: number): Complex => {
  const omega = 2 * Math.PI * frequency;
  let squared = (omega / SOUND_SPEED) ** 2;
  let stiffness = atWavenumber(leaf, frequency, squared);
  if (leaf.sandwiches.length === 0) return stiffness;
  for (let step = 0; step < 12; step += 1) {
    squared = omega * Math.sqrt(leaf.mass / modulus(stiffness));
    stiffness = atWavenumber(leaf, frequency, squared);
  }
  return stiffness;
};

/** Critical frequency of a leaf, Hz; of a sandwich by iteration, kB(fc) = k0(fc). Null for a limp leaf. */
export const leafCriticalFrequency = (leaf: Omit<LeafModel, 'criticalFrequency'>): number | null => {
  let fc = criticalFrequency(leaf.mass, atWavenumber(leaf, 1000, 300).re);
  if (leaf.sandwiches.length === 0) {
    const B = leaf.plates.reduce((sum, plate) => sum + plate.bending, 0);
    return criticalFrequency(leaf.mass, B);
  }
  for (let step = 0; step < 30 && fc !== null; step += 1) {
    const squared = ((2 * Math.PI * fc) / SOUND_SPEED) ** 2;
    fc = criticalFrequency(leaf.mass, atWavenumber(leaf, fc, squared).re);
  }
  return fc;
};
