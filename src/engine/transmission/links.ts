import { AIR_DENSITY, AIR_IMPEDANCE, SOUND_SPEED, modulus } from '../quantities/index.ts';
import { freeWaveRadiation, revealFactor } from './freeWaveRadiation.ts';
import { leafStiffness } from './leafStiffness.ts';
import type { LeafModel, Link } from './stack.ts';

/** Above this share of its critical frequency a linked leaf's own waves are part of the forced response. */
const FREE_WAVES_UP_TO = 0.8;

/** What a link sees of one leaf at one frequency. */
export interface LeafResponse {
  readonly mass: number;
  readonly criticalFrequency: number | null;
  /** |B|, N·m */
  readonly stiffness: number;
  readonly lossFactor: number;
  /** mean square velocity per mean square diffuse pressure: V, m²/(Pa·s)²; of the forced response, and withFreeWaves */
  readonly velocity: number;
}

/** The bending figures of a leaf at one frequency. @param velocity V of the forced response */
export const leafResponse = (leaf: LeafModel, frequency: number, velocity: number): LeafResponse => {
  const B = leafStiffness(leaf, frequency);
  return {
    mass: leaf.mass,
    criticalFrequency: leaf.criticalFrequency,
    stiffness: modulus(B),
    lossFactor: B.re > 0 ? B.im / B.re : 0,
    velocity,
  };
};

/**
 * Mean square velocity that free bending waves add to V: 4·Wr/(ρ0·ω), Wr = ρ0c0·σr/(4m·cB·ωm·ηt), below 0.8·fc.
 * @source reciprocity of radiation and response; radiation factor of ISO 12354-1:2017, annex B
 */
const freeVelocity = (leaf: LeafResponse, frequency: number, link: Link): number => {
  const fc = leaf.criticalFrequency;
  if (fc === null || frequency >= FREE_WAVES_UP_TO * fc) return 0;
  const omega = 2 * Math.PI * frequency;
  const sigma = freeWaveRadiation(frequency, fc, link.bay[0], link.bay[1]);
  const loss = leaf.lossFactor + link.addedLoss + (2 * AIR_IMPEDANCE * sigma) / (omega * leaf.mass);
  const speed = SOUND_SPEED * Math.sqrt(frequency / fc);
  return (sigma * SOUND_SPEED) / (leaf.mass * speed * omega * leaf.mass * loss * omega);
};

/** A leaf whose velocity is that of its forced response, with the free waves that ring between the links beside it. */
export const withFreeWaves = (link: Link, leaf: LeafResponse, frequency: number): LeafResponse => ({
  ...leaf,
  velocity: leaf.velocity + freeVelocity(leaf, frequency, link),
});

/** Compliance of a link at a frequency: Σ C·(fk/max(f, fk))^n, m²/N. */
const complianceAt = (link: Link, frequency: number): number =>
  link.compliances.reduce(
    (sum, term) => sum + term.compliance * (term.knee / Math.max(frequency, term.knee)) ** term.exponent,
    0,
  );

/**
 * Power that a link carries from one leaf to the other, as a transmission coefficient.
 * Line: τL = ρ0²·c0·ω·V1·V2/(b·|Y|²), Y = Σ 1/(2(1 + j)·m·cB) + jωC. Points: τP = n·ρ0²·ω²·V1·V2/(π·|Y|²),
 * Y = Σ 1/(8·√(B·m)) + jωC/s, n = 1/(b·s). Without a cut at the resonance.
 * @param link spacing, pitch, compliance
 * @param first leaf on one side, withFreeWaves
 * @param second leaf on the other, likewise
 * @param frequency f, Hz, > 0
 * @returns τ, ≥ 0
 * @validity leaves large against their bending wavelength; links independent of each other
 * @source line and point impedances: Cremer, Heckl and Petersson (2005); reciprocity of V; twice the value with
 *   rigid lines is Davy, J. Acoust. Soc. Am. 90 (1991) 2135
 * @example linkTransmission(link, leaf, leaf, 500)
 */
export const linkTransmission = (link: Link, first: LeafResponse, second: LeafResponse, frequency: number): number => {
  if (first.stiffness <= 0 || second.stiffness <= 0) return 0;
  const omega = 2 * Math.PI * frequency;
  const V1 = first.velocity;
  const V2 = second.velocity;
  const compliance = omega * complianceAt(link, frequency);
  // 1/(2(1 + j)·m·cB) = (1 − j)/(4·m·cB)
  const mobility = (leaf: LeafResponse): number =>
    1 / (4 * leaf.mass * (omega * omega * (leaf.stiffness / leaf.mass)) ** 0.25);
  const lineRe = mobility(first) + mobility(second);
  const lineIm = compliance - lineRe;
  const line =
    (AIR_DENSITY ** 2 * SOUND_SPEED * omega * V1 * V2) / (link.spacing * (lineRe * lineRe + lineIm * lineIm));
  if (link.form === 'line') return line;
  const pointRe =
    1 / (8 * Math.sqrt(first.stiffness * first.mass)) + 1 / (8 * Math.sqrt(second.stiffness * second.mass));
  const pointIm = compliance / link.pitch;
  const points =
    (AIR_DENSITY ** 2 * omega * omega * V1 * V2) /
    (link.spacing * link.pitch * Math.PI * (pointRe * pointRe + pointIm * pointIm));
  return Math.min(line, points);
};

/**
 * Free waves of a leaf in the diffuse field: τr = (2ρ0c0/ωm)²·(π·fc/2f)·σr²/ηt, ηt = η + 2ρ0c0σr/(ωm). Panes between
 * reveals radiate more (revealFactor).
 * @returns τr, ≥ 0; 0 from fc upwards and for a limp leaf
 * @source ISO 12354-1:2017, annex B
 */
export const freeWaveTransmission = (
  leaf: LeafResponse,
  frequency: number,
  [width, height]: readonly [number, number],
  inReveal: boolean,
): number => {
  const fc = leaf.criticalFrequency;
  if (fc === null || frequency >= fc) return 0;
  const omega = 2 * Math.PI * frequency;
  const flush = freeWaveRadiation(frequency, fc, width, height);
  const sigma = inReveal ? Math.min(2, flush * revealFactor(frequency, fc)) : flush;
  const ratio = (2 * AIR_IMPEDANCE) / (omega * leaf.mass);
  return (ratio * ratio * ((Math.PI * fc) / (2 * frequency)) * sigma * sigma) / (leaf.lossFactor + ratio * sigma);
};

/**
 * Free waves beside the forced response, which takes them over towards fc: τr·(1 − (f/fc)²)², the inverse of what the
 * forced response grows by. Were they to end suddenly, R would have a hump of up to 7 dB below fc that no wall shows.
 * @returns τ, ≥ 0
 * @source growth of the forced response: ISO 12354-1:2017, annex B; that the free waves give way by it: engineering
 *   judgement
 */
export const resonantTransmission = (
  leaf: LeafResponse,
  frequency: number,
  size: readonly [number, number],
  inReveal: boolean,
): number => {
  const free = freeWaveTransmission(leaf, frequency, size, inReveal);
  return free > 0 ? free * (1 - (frequency / (leaf.criticalFrequency ?? Infinity)) ** 2) ** 2 : 0;
};

/** Least transmission of a thick wall: τ ≥ (4ρ0c0/(1.1·ρ·cL))²·0.02/η. @source ISO 12354-1:2017, annex B */
export const thickWallTransmission = (leaf: LeafModel, lossFactor: number): number =>
  leaf.wallImpedance === null ? 0 : (((4 * AIR_IMPEDANCE) / (1.1 * leaf.wallImpedance)) ** 2 * 0.02) / lossFactor;
