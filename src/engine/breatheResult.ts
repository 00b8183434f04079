import type { AirPlan, AirResult } from './airflow/index.ts';
import type { VentNoise, VentPath, VentSound } from './openings/index.ts';
import type { Note } from './quantities/index.ts';

/** A vent in its place. */
export interface PlacedVent {
  readonly path: VentPath;
  /** part of the opening, and of the surface that it goes through */
  readonly opening: string;
  readonly surface: string;
}

/** What is asked of the vents and the air of a room. */
export interface BreatheQuestion {
  readonly vents: readonly PlacedVent[];
  /** null where nothing is known of the room */
  readonly air: AirPlan | null;
  /** s */
  readonly reverberation: number;
}

/** What a vent does to the wall it goes through. */
export interface VentCost {
  readonly surface: string;
  readonly wall: string;
  /** R of the wall without vents, dB per band, and its area, m² */
  readonly wallR: readonly number[];
  readonly wallArea: number;
  /** Dn,e with which all vents of the wall together cost it 1 dB, per band */
  readonly wanted: readonly number[];
  /** what this vent costs the wall, dB per band */
  readonly lost: readonly number[];
  /** the same for living noise, 100 Hz to 3.15 kHz, A-weighted */
  readonly lostOverall: number;
}

/** Noise at a place, dB per octave 63 Hz to 8 kHz. */
export interface RatedNoise {
  readonly levels: readonly number[];
  readonly noiseRating: number;
  /** null below NC 15 or above NC 65 */
  readonly noiseCriterion: number | null;
}

export interface VentReport {
  readonly id: string;
  readonly name: string;
  readonly opening: string;
  readonly direction: 'supply' | 'extract';
  /** with the air moving as its fans and the weather move it */
  readonly sound: VentSound;
  /** insertion loss with the fans standing, dB per band: without flow nothing damps box and ducts */
  readonly fanOff: readonly number[];
  /** R on the area of the opening, dB per band */
  readonly R: readonly number[];
  /** null where the wall is not known */
  readonly cost: VentCost | null;
  /** m³/s, 0 where nothing is known of the room */
  readonly flow: number;
  readonly noise: VentNoise;
  /** in the room; null where nothing is known of it */
  readonly inRoom: RatedNoise | null;
  /** NR in the room of each piece of `noise` by itself; null where nothing is known of the room */
  readonly pieceRatings: readonly number[] | null;
}

/** Vents and air of a room. */
export interface BreatheResult {
  readonly vents: readonly VentReport[];
  readonly air: AirResult | null;
  /** all vents together in the room */
  readonly inRoom: RatedNoise | null;
  readonly notes: readonly Note[];
}
