import { AIR_DENSITY, SOUND_SPEED } from '../quantities/index.ts';
import { leafFlow, slowWaveLoss, type LeafFlow } from './secondMethodLeaf.ts';
import { bridging, frameCoupling } from './secondMethodTies.ts';
import type { LeafModel, Link } from './stack.ts';

/** Volume of the source room; cancels. */
const ROOM = 50;
/** Keeps a leaf without any loss finite. */
const SOME_LOSS = 1e-12;

/** Two leaves and what ties them together. */
export interface Framed {
  readonly first: LeafModel;
  readonly second: LeafModel;
  readonly links: readonly Link[];
  /** m */
  readonly size: readonly [number, number];
  /** sides of the piece of leaf that rings between studs, m */
  readonly bay: readonly [number, number];
  /** loss factor that an absorber in the cavity adds to slow waves */
  readonly absorbed: number;
}

/**
 * τ of what runs through the frame: free waves of both leaves as subsystems between two rooms, driven by the room (η21 =
 * ρ0c0·σ/(ω·m)) and by the ties that the sound shakes, and the near field of the ties that shaken leaves radiate by.
 * @param framed leaves and ties
 * @param frequency f, Hz, > 0
 * @returns τ; 0 where a leaf is limp or nothing ties them
 * @source Craik and Smith, Applied Acoustics 61 (2000) 247-269; Price and Crocker (1970); Sharp (1978); forms from memory
 */
export const frameFlow = ({ first, second, links, size, bay, absorbed }: Framed, frequency: number): number => {
  const of = (leaf: LeafModel): LeafFlow =>
    leafFlow(leaf, frequency, size, bay, slowWaveLoss(leaf, frequency, absorbed));
  const [a, b] = [of(first), of(second)];
  if (!(a.modes > 0 && b.modes > 0)) return 0;
  const omega = 2 * Math.PI * frequency;
  const area = size[0] * size[1];
  const room = (4 * Math.PI * frequency ** 2 * ROOM) / SOUND_SPEED ** 3;
  // lines of different leaves are not reciprocal by themselves: the mean of both directions is
  const [there, home] = [frameCoupling(links, a, b, frequency), frameCoupling(links, b, a, frequency)];
  const tied = Math.sqrt((there * home * b.modes) / a.modes);
  const back = (tied * a.modes) / b.modes;
  // what falls on a leaf shakes the ties as well: <v²> = 2<p²>/(ωm)²; the way out by reciprocity
  const shaken = (leaf: LeafFlow, ties: number): number =>
    (ties * area * 2 * AIR_DENSITY * SOUND_SPEED ** 2) / (ROOM * omega * omega * leaf.mass);
  const into = shaken(a, tied);
  const nearField = (shaken(b, back) * room) / a.modes;
  const lossA = a.loss + 2 * a.radiation + tied + nearField + SOME_LOSS;
  const lossB = b.loss + 2 * b.radiation + back + (into * room) / b.modes + SOME_LOSS;
  // two balances, energies of the leaves for a source room of energy 1
  const driven = (a.radiation * a.modes) / room;
  const whole = lossA * lossB - back * tied;
  const [ofA, ofB] = [(driven * lossB + back * into) / whole, (lossA * into + tied * driven) / whole];
  const free = (omega * (ofA * nearField + ofB * b.radiation) * 4 * ROOM) / (SOUND_SPEED * area);
  return free + (bridging(links, a, b, frequency) + bridging(links, b, a, frequency)) / 2;
};
