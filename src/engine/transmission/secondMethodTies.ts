import { AIR_IMPEDANCE, SOUND_SPEED } from '../quantities/index.ts';
import type { LeafFlow } from './secondMethodLeaf.ts';
import type { Link } from './stack.ts';

/** How a tie moves between two leaves at a frequency. */
interface Tie {
  /** |Y2|²/|Y|² of lines and of points, Y = Y1 + Y2 + jωC: share of the free velocity that passes on, squared */
  readonly line: number;
  readonly point: number;
  /** Re(Y2)/|Y|², line and point: power that passes on per squared free velocity, of one metre or of one point */
  readonly linePower: number;
  readonly pointPower: number;
}

/** Mobilities: lines 1/(2(1 + j)·m·cB), points 1/(8·√(B·m)). @source Cremer, Heckl and Petersson (2005) */
const tieOf = (link: Link, from: LeafFlow, to: LeafFlow, frequency: number): Tie => {
  const omega = 2 * Math.PI * frequency;
  const speed = (leaf: LeafFlow): number => (omega * omega * (leaf.stiffness / leaf.mass)) ** 0.25;
  const line = (leaf: LeafFlow): number => 1 / (4 * leaf.mass * speed(leaf));
  const point = (leaf: LeafFlow): number => 1 / (8 * Math.sqrt(leaf.stiffness * leaf.mass));
  const give = link.compliances.reduce(
    (all, term) => all + term.compliance * (term.knee / Math.max(frequency, term.knee)) ** term.exponent,
    0,
  );
  const real = line(from) + line(to);
  const lines = real ** 2 + (omega * give - real) ** 2;
  const points = (point(from) + point(to)) ** 2 + ((omega * give) / link.pitch) ** 2;
  return {
    line: (2 * line(to) ** 2) / lines,
    point: point(to) ** 2 / points,
    linePower: line(to) / lines,
    pointPower: point(to) / points,
  };
};

const stiff = (...leaves: readonly LeafFlow[]): boolean => leaves.every(({ stiffness }) => stiffness > 0);

/**
 * Coupling loss factor of the frame from one leaf to the other: lines η = Re(Y2)/(ω·m1·b·|Y|²), or points
 * η = Re(Y2)/(ω·m1·b·s·|Y|²), the lesser.
 * @source Craik and Smith, Applied Acoustics 61 (2000) 247-269 (form from memory)
 */
export const frameCoupling = (links: readonly Link[], from: LeafFlow, to: LeafFlow, frequency: number): number => {
  if (!stiff(from, to)) return 0;
  const omega = 2 * Math.PI * frequency;
  return links.reduce((sum, link) => {
    const { linePower, pointPower } = tieOf(link, from, to, frequency);
    const lines = linePower / (omega * from.mass * link.spacing);
    const points = pointPower / (omega * from.mass * link.spacing * link.pitch);
    return sum + (link.form === 'line' ? lines : Math.min(lines, points));
  }, 0);
};

/**
 * τ of the near field: a leaf shaken by what falls on it, <v²> = 2<p²>/(ωm)², moves the ties, and each radiates from the other
 * leaf as a strip 2λc/π wide, or a patch of 8λc²/π³, would: τ = 4·(ρ0c0)²·(area per area)·<v_tie²>/<p²>.
 * @source Sharp, Noise Control Eng. 11 (1978) 53-63, line and point bridges (form from memory)
 */
export const bridging = (links: readonly Link[], from: LeafFlow, to: LeafFlow, frequency: number): number => {
  if (!stiff(from, to) || to.criticalFrequency === null) return 0;
  const length = SOUND_SPEED / to.criticalFrequency;
  const shaken = 2 / (2 * Math.PI * frequency * from.mass) ** 2;
  return links.reduce((sum, link) => {
    const { line, point } = tieOf(link, from, to, frequency);
    const lines = ((2 * length) / Math.PI / link.spacing) * line;
    const points = ((8 * length ** 2) / Math.PI ** 3 / (link.spacing * link.pitch)) * point;
    return sum + 4 * AIR_IMPEDANCE ** 2 * shaken * (link.form === 'line' ? lines : Math.min(lines, points));
  }, 0);
};
