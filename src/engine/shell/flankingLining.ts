/** A floating floor or lining as a mass on a resilient layer. */
export interface ResilientLining {
  /** m', kg/m², > 0 */
  readonly surfaceMass: number;
  /** s', MN/m³, > 0 */
  readonly stiffness: number;
}

/**
 * Resonance of a floating floor or resilient lining on a heavy element: f0 = 160·√(s'/m').
 * @param lining m' kg/m²; s' MN/m³
 * @returns f0, Hz
 * @source ISO 12354-2:2017, annex C; ISO 12354-1:2017, annex D
 * @example liningResonance({ surfaceMass: 73.5, stiffness: 8 }) // 52.8
 */
export const liningResonance = ({ surfaceMass, stiffness }: ResilientLining): number =>
  160 * Math.sqrt(stiffness / surfaceMass);

/**
 * Improvement by a floating floor or resilient lining: ΔR = 30 lg(f/f0) above its resonance, 0 below.
 * @param lining m' kg/m²; s' MN/m³
 * @param frequency f, Hz, > 0
 * @param most dB; beyond this the edges and other ways carry
 * @returns ΔR, dB
 * @validity resilient layers without rigid links; near f0 a real lining may lose some dB
 * @source ISO 12354-1:2017, Table L.4
 * @example liningImprovement({ surfaceMass: 73.5, stiffness: 8 }, 500) // 29.3
 */
export const liningImprovement = (lining: ResilientLining, frequency: number, most = Infinity): number =>
  Math.min(most, Math.max(0, 30 * Math.log10(frequency / liningResonance(lining))));

/**
 * Weighted improvement of linings on both elements of a path: the greater one and half the lesser.
 * @param first ΔRw,i, dB
 * @param second ΔRw,j, dB
 * @source EN 12354-1:2000, 4.4.2 (from memory)
 */
export const pathImprovement = (first: number, second: number): number =>
  Math.max(first, second) + Math.min(first, second) / 2;
