import type { LeafFlow } from './secondMethodLeaf.ts';
import type { Link } from './stack.ts';

/**
 * Coupling loss factor of the frame from one leaf to the other: lines η = Re(Y2)/(ω·m1·b·|Y|²), Y = Σ 1/(2(1 + j)·m·cB) +
 * jωC, or points η = Re(Y2)/(ω·m1·b·s·|Y|²), Y = Σ 1/(8·√(B·m)) + jωC/s, the lesser.
 * @source Craik and Smith, Applied Acoustics 61 (2000) 247-269 (form from memory); impedances: Cremer, Heckl and Petersson (2005)
 */
export const frameCoupling = (links: readonly Link[], from: LeafFlow, to: LeafFlow, frequency: number): number => {
  if (from.stiffness <= 0 || to.stiffness <= 0) return 0;
  const omega = 2 * Math.PI * frequency;
  const speed = (leaf: LeafFlow): number => (omega * omega * (leaf.stiffness / leaf.mass)) ** 0.25;
  const line = (leaf: LeafFlow): number => 1 / (4 * leaf.mass * speed(leaf));
  const point = (leaf: LeafFlow): number => 1 / (8 * Math.sqrt(leaf.stiffness * leaf.mass));
  return links.reduce((sum, link) => {
    const give = link.compliances.reduce(
      (all, term) => all + term.compliance * (term.knee / Math.max(frequency, term.knee)) ** term.exponent,
      0,
    );
    const real = line(from) + line(to);
    const imaginary = omega * give - real;
    const lines = line(to) / (omega * from.mass * link.spacing * (real ** 2 + imaginary ** 2));
    if (link.form === 'line') return sum + lines;
    const stiff = (point(from) + point(to)) ** 2 + ((omega * give) / link.pitch) ** 2;
    const points = point(to) / (omega * from.mass * link.spacing * link.pitch * stiff);
    return sum + Math.min(lines, points);
  }, 0);
};
