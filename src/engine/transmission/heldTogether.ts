import { massAirMassResonance } from '../assembly/index.ts';
import type { Leaf, Structure } from '../assembly/index.ts';
import { stiffnessOfStuds } from './connection.ts';

/** A build-up of three or more leaves in which stiff studs make one leaf of two, and how far that holds. */
export interface HeldTogether {
  readonly structure: Structure;
  /** 1 where the studs hold the boards together, 0 where the boards move by themselves; per frequency, Hz */
  readonly share: (frequency: number) => number;
}

const merged = (first: Leaf, second: Leaf): Leaf => ({
  layers: [...first.layers, ...second.layers],
  boards: [...first.boards, ...second.boards],
  joints: [...first.joints, 'screwed', ...second.joints],
  surfaceMass: first.surfaceMass + second.surfaceMass,
  thickness: first.thickness + second.thickness,
  masonry: false,
  glass: false,
});

/**
 * Boards on both sides of stiff common studs move as one mass around and below their own mass-air-mass resonance. With
 * two leaves that is part of the fitted model; with three or more it decides how the group moves against the rest:
 * the group is taken as one leaf, fading as 1/(1 + (f/2f0)⁴).
 * @param structure leaves and cavities
 * @returns the build-up with such leaves merged; null for two leaves or where no stiff studs are
 * @validity lightweight leaves on timber or heavy steel studs
 * @source engineering judgement: a framed wall boarded on both faces beside another rates near 40, the same boards as two leaves above 57
 *   in the trade's wall charts (common practice)
 */
export const heldTogether = (structure: Structure): HeldTogether | null => {
  const { leaves, cavities } = structure;
  const [start] = leaves;
  if (leaves.length < 3 || !start) return null;
  const joined: Leaf[] = [start];
  const kept: Structure['cavities'][number][] = [];
  let hold = 0;
  let resonance = Infinity;
  cavities.forEach((cavity, i) => {
    const first = leaves[i];
    const second = leaves[i + 1];
    const last = joined.at(-1);
    if (!first || !second || !last) return;
    const stiffness = stiffnessOfStuds(first, cavity, second);
    if (stiffness > 0) {
      joined[joined.length - 1] = merged(last, second);
      hold = Math.max(hold, stiffness);
      resonance = Math.min(resonance, massAirMassResonance(first.surfaceMass, second.surfaceMass, cavity.depth));
    } else {
      joined.push(second);
      kept.push(cavity);
    }
  });
  if (joined.length === leaves.length) return null;
  return {
    structure: { ...structure, leaves: joined, cavities: kept },
    share: (frequency) => hold / (1 + (frequency / (2 * resonance)) ** 4),
  };
};
