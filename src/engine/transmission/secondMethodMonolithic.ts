import { AIR_IMPEDANCE, SOUND_SPEED, toReduction } from '../quantities/index.ts';
import { freeWaveRadiation } from './freeWaveRadiation.ts';

/** A homogeneous wall, slab or pane. */
export interface MonolithicElement {
  /** m', kg/m² */
  readonly surfaceMass: number;
  /** fc, Hz */
  readonly criticalFrequency: number;
  /** total loss factor η per band */
  readonly lossFactor: number;
  /** ρ·cL, Pa·s/m: the thick-wall limit; null for thin boards */
  readonly wallImpedance: number | null;
  /** longer and shorter side, m */
  readonly size: readonly [number, number];
}

/** ρ0·c0, Pa·s/m, and c0, m/s. */
export interface Medium {
  readonly impedance: number;
  readonly soundSpeed: number;
}
const AIR: Medium = { impedance: AIR_IMPEDANCE, soundSpeed: SOUND_SPEED };

/**
 * Radiation factor of forced waves: σ_f = ½·{ln(k0·√(l1·l2)) − Λ}, at most 2,
 * Λ = −0.964 − (0.5 + l2/(π·l1))·ln(l2/l1) + 5·l2/(2π·l1) − 1/(4π·l1·l2·k0²), l1 the longer side.
 * @param frequency f, Hz, > 0
 * @param size sides, m, > 0
 * @param soundSpeed c0, m/s
 * @returns σ_f, 0 to 2
 * @validity 0.1 < l1/l2 < 10
 * @source ISO 12354-1:2017, annex B.2 (formula from memory; reproduces Table L.2 to 1e-4)
 * @example forcedWaveRadiation(100, [5, 4], 340) // 1.1361
 */
export const forcedWaveRadiation = (
  frequency: number,
  size: readonly [number, number],
  soundSpeed = SOUND_SPEED,
): number => {
  const [l1, l2] = [Math.max(...size), Math.min(...size)];
  const k0 = (2 * Math.PI * frequency) / soundSpeed;
  const Lambda =
    -0.964 -
    (0.5 + l2 / (Math.PI * l1)) * Math.log(l2 / l1) +
    (5 * l2) / (2 * Math.PI * l1) -
    1 / (4 * Math.PI * l1 * l2 * k0 * k0);
  return Math.min(2, Math.max(0, 0.5 * (Math.log(k0 * Math.sqrt(l1 * l2)) - Lambda)));
};

/** Whether the third octave round f holds fc. */
const holds = (frequency: number, critical: number): boolean => Math.abs(Math.log2(frequency / critical)) < 1 / 6;

/**
 * Sound reduction index of a homogeneous element by its forced and free waves, with Z = ρ0·c0:
 * above fc τ = (Z/(πf·m'))²·π·fc·σ²/(2f·η); below it τ = (Z/(πf·m'))²·{2σ_f/[1 − (f/fc)²]² + π·fc·σ²/(2f·η)}; in the
 * band of fc τ = (Z/(πf·m'))²·π·σ²/(2η); never less than the thick-wall limit (4Z/(1.1·ρ·cL))²·0.02/η.
 * @param element m', fc, η, ρ·cL, sides
 * @param frequency f, Hz, > 0, nominal centre of a third octave
 * @param air ρ0·c0 and c0
 * @returns R, dB
 * @throws RangeError when the mass or the loss factor is not > 0
 * @validity single homogeneous elements; third octaves above the first few resonances
 * @source ISO 12354-1:2017, annex B (formulas from memory; reproduce Table L.3 to 0.1 dB with c0 = 340 m/s)
 * @example monolithicReduction(floor, 500) // 54.9
 */
export const monolithicReduction = (element: MonolithicElement, frequency: number, air: Medium = AIR): number => {
  const { surfaceMass, criticalFrequency: fc, lossFactor, wallImpedance, size } = element;
  for (const [name, value] of Object.entries({ surfaceMass, lossFactor }))
    if (!(value > 0)) throw new RangeError(`${name} must be > 0, got ${value}`);
  const Z = air.impedance;
  const limp = (Z / (Math.PI * frequency * surfaceMass)) ** 2;
  const sigma = freeWaveRadiation(frequency, fc, Math.max(...size), Math.min(...size), air.soundSpeed);
  const free = (Math.PI * fc * sigma * sigma) / (2 * frequency * lossFactor);
  const forced = (2 * forcedWaveRadiation(frequency, size, air.soundSpeed)) / (1 - (frequency / fc) ** 2) ** 2;
  const tau = holds(frequency, fc)
    ? (limp * Math.PI * sigma * sigma) / (2 * lossFactor)
    : limp * (frequency > fc ? free : forced + free);
  const least = wallImpedance === null ? 0 : (((4 * Z) / (1.1 * wallImpedance)) ** 2 * 0.02) / lossFactor;
  return toReduction(Math.min(1, Math.max(tau, least)));
};
