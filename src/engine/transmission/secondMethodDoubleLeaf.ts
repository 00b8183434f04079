import { AIR_DENSITY, AIR_IMPEDANCE, SOUND_SPEED, toReduction } from '../quantities/index.ts';
import { cavityDepth, cavityLoss } from './secondMethodCavity.ts';
import { leafFlow, type LeafFlow } from './secondMethodLeaf.ts';
import { forcedWaveRadiation } from './secondMethodMonolithic.ts';
import { frameCoupling } from './secondMethodTies.ts';
import type { GapModel, LeafModel } from './stack.ts';

/** Width of a bay where no frame tells it, m. @source engineering judgement: as in framed walls */
const BAY = 0.6;
/** Volume of the source room; cancels. */
const ROOM = 50;

/** Solves a·x = b for three unknowns, by elimination with the largest pivot. */
const solved = (rows: readonly (readonly number[])[]): readonly number[] => {
  const work = rows.map((row) => [...row]);
  for (let column = 0; column < 3; column += 1) {
    const below = work.slice(column).sort((a, b) => Math.abs(b[column] ?? 0) - Math.abs(a[column] ?? 0));
    work.splice(column, below.length, ...below);
    const pivot = work[column] ?? [];
    for (const row of work) {
      if (row === pivot) continue;
      const factor = (row[column] ?? 0) / (pivot[column] ?? 1);
      row.forEach((value, i) => (row[i] = value - factor * (pivot[i] ?? 0)));
    }
  }
  return work.map((row, i) => (row[3] ?? 0) / (row[i] ?? 1));
};

/** Two leaves on a cavity, as the second method sees them. */
export interface DoubleLeaf {
  readonly first: LeafModel;
  readonly gap: GapModel;
  readonly second: LeafModel;
  /** m */
  readonly size: readonly [number, number];
  /** mass-air-mass resonance, Hz */
  readonly resonance: number;
}

/**
 * Sound reduction index of a double leaf by energy flow: room, leaf, cavity, leaf, room as subsystems. Non-resonant
 * paths room to cavity and cavity to room (η13 = c0·S·τ1/(4ω·V1)), free waves of the leaves (η21 = ρ0c0·σ/(ω·m)), the
 * cavity as a reverberant field (two-dimensional below c0/2d), the frame as line or point ties between the leaves.
 * Below the mass-air-mass resonance both leaves move as one mass; between it and its octave the two are blended.
 * @param wall leaves, cavity, frame, size, resonance
 * @param frequency f, Hz, > 0
 * @returns R, dB
 * @validity above the octave of the mass-air-mass resonance; a cavity full of absorber is hardly reverberant, which
 *   makes R there a rough figure; no seams and seals
 * @source Price and Crocker, J. Acoust. Soc. Am. 47 (1970) 683-693; Craik, Applied Acoustics 64 (2003) 325-341
 *   (non-resonant paths); Craik and Smith, Applied Acoustics 61 (2000) 247-269 (ties); forms from memory
 * @example doubleLeafReduction(wall, 500)
 */
export const doubleLeafReduction = (wall: DoubleLeaf, frequency: number): number => {
  const { first, gap, second, size, resonance } = wall;
  const omega = 2 * Math.PI * frequency;
  const area = size[0] * size[1];
  const depth = cavityDepth(gap.layers);
  const bay = gap.links[0]?.bay ?? ([Math.min(BAY, size[0]), size[1]] as const);
  const added = Math.max(0, ...gap.links.map((link) => link.addedLoss));
  const [a, b] = [leafFlow(first, frequency, size, bay, added), leafFlow(second, frequency, size, bay, added)];
  const room = (4 * Math.PI * frequency ** 2 * ROOM) / SOUND_SPEED ** 3;
  const flat = (2 * Math.PI * frequency * area) / SOUND_SPEED ** 2;
  const deep = (4 * Math.PI * frequency ** 2 * area * depth) / SOUND_SPEED ** 3;
  const cavity = Math.max(flat, deep);
  const forced = (leaf: LeafFlow): number => (SOUND_SPEED * area * leaf.forced) / (4 * omega * ROOM);
  const intoCavity = forced(a);
  const [backOut, out] = [(intoCavity * room) / cavity, (forced(b) * room) / cavity];
  const [caught, passed] = [(a.radiation * a.modes) / cavity, (b.radiation * b.modes) / cavity];
  // lines of different leaves are not reciprocal by themselves: the mean of both directions is
  const [there, home] = [frameCoupling(gap.links, a, b, frequency), frameCoupling(gap.links, b, a, frequency)];
  const stiff = a.modes > 0 && b.modes > 0;
  const tied = stiff ? Math.sqrt((there * home * b.modes) / a.modes) : 0;
  const back = stiff ? (tied * a.modes) / b.modes : 0;
  // what falls on a leaf shakes the ties as well: <v²> = 2<p²>/(ωm)²; the way out by reciprocity
  const shaken = (leaf: LeafFlow, ties: number): number =>
    (ties * area * 2 * AIR_DENSITY * SOUND_SPEED ** 2) / (ROOM * omega * omega * leaf.mass);
  const intoSecond = shaken(a, tied);
  const nearField = stiff ? (shaken(b, back) * room) / a.modes : 0;
  const nearFieldBack = stiff ? (intoSecond * room) / b.modes : 0;
  const [E2, E3, E4] = solved([
    [a.loss + 2 * a.radiation + tied + nearField + 1e-12, -caught, -back, (a.radiation * a.modes) / room],
    [-a.radiation, cavityLoss(gap.layers, frequency, bay) + backOut + out + caught + passed, -b.radiation, intoCavity],
    [-tied, -passed, b.loss + 2 * b.radiation + back + nearFieldBack + 1e-12, intoSecond],
  ]) as readonly [number, number, number];
  const flow = (omega * (E2 * nearField + E3 * out + E4 * b.radiation) * 4 * ROOM) / (SOUND_SPEED * area);
  const mass = first.mass + second.mass;
  const together = 2 * forcedWaveRadiation(frequency, size) * (AIR_IMPEDANCE / (Math.PI * frequency * mass)) ** 2;
  const above = Math.min(1, Math.max(0, Math.log2(frequency / resonance)));
  return toReduction(Math.min(1, above * flow + (1 - above) * together));
};
