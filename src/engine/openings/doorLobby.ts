import { requirePositive, toReduction, toTransmission } from '../quantities/index.ts';

/** Two leaves with an air gap between them. */
export interface Lobby {
  /** leaf area S, m² */
  readonly area: number;
  /** edge of the gap all round, m */
  readonly perimeter: number;
  /** between the leaves, m */
  readonly gap: number;
  /** absorber round the reveal */
  readonly lined: boolean;
  /** kg/m² of each leaf */
  readonly masses: readonly [number, number];
}

/** What passes round both leaves by frames and wall, dB. @source common practice: pairs of doors reach 45 to 52 dB, heavy ones 55 */
const FRAMES = 54;
const BARE = 0.05;
const LINED = 0.9;

/** Absorption in the gap, m². @source engineering judgement: 50 mm of wool absorbs fully from 500 Hz on */
const absorption = ({ area, perimeter, gap, lined }: Lobby, frequency: number): number =>
  BARE * 2 * area + perimeter * gap * (lined ? LINED * Math.min(1, frequency / 500) : BARE);

/**
 * Transmission of two leaves one behind the other, each with its leaks.
 * Below the mass-air-mass resonance f0 = 60√((m1+m2)/(m1·m2·d)) as one leaf of both masses; above it
 * R = R1 + R2 + min(20 lg(f·d) − 29, 10 lg(A/S)), A the absorption between them, never worse than the better leaf.
 * @param one τ of the first leaf
 * @param other τ of the second
 * @param lobby sizes and masses
 * @param frequency band centre, Hz
 * @returns τ
 * @throws RangeError for a gap ≤ 0
 * @validity leaves in separate frames
 * @source Sharp, Noise Control Eng. 11 (1978) 53-63 (20 lg fd − 29); energy balance of a small room; cap: practice
 */
export const lobbyTransmission = (one: number, other: number, lobby: Lobby, frequency: number): number => {
  requirePositive('gap between the leaves', lobby.gap, 'm');
  const [R1, R2] = [toReduction(one), toReduction(other)];
  const [m1, m2] = lobby.masses;
  const best = Math.max(R1, R2);
  const resonance = 60 * Math.sqrt((m1 + m2) / (m1 * m2 * lobby.gap));
  const frames = toTransmission(FRAMES);
  if (frequency < resonance) {
    const both = 20 * Math.log10((m1 + m2) / Math.max(m1, m2));
    return toTransmission(best + Math.min(both, 3)) + frames;
  }
  const coupling = 20 * Math.log10(frequency * lobby.gap) - 29;
  const gain = Math.min(coupling, 10 * Math.log10(absorption(lobby, frequency) / lobby.area), 0);
  return toTransmission(Math.max(best, R1 + R2 + gain)) + frames;
};
