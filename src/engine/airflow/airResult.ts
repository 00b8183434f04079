import type { Note } from '../quantities/index.ts';
import type { CarbonDioxideCourse } from './carbonDioxide.ts';
import type { RoomMoisture } from './moisture.ts';
import type { OperatingPoint } from './operatingPoint.ts';
import type { PieceLoss } from './pathLoss.ts';

/** One vent at work. */
export interface PathFlow {
  readonly id: string;
  /** m³/s in the vent's own direction; negative backwards */
  readonly flow: number;
  /** in the direction of the flow planned */
  readonly pieces: readonly PieceLoss[];
  /** Pa, of all pieces */
  readonly loss: number;
  /** Pa, of its fans */
  readonly fanPressure: number;
}

/** A session under one assumption. */
export interface AirScenario {
  readonly key: 'planned' | 'fan-off' | 'door-open';
  readonly name: string;
  readonly course: CarbonDioxideCourse;
  /** s until 1000, 1500 and 5000 ppm; null where they are not reached */
  readonly timeTo1000: number | null;
  readonly timeTo1500: number | null;
  readonly timeTo5000: number | null;
}

/** The air of a room. */
export interface AirResult {
  readonly people: number;
  /** fans running, door closed */
  readonly point: OperatingPoint;
  readonly paths: readonly PathFlow[];
  /** fans standing, door closed: what warmth and wind alone move */
  readonly still: OperatingPoint;
  /** from mouth to mouth: pressure by which warm air rises, and of the wind towards the used air's side, Pa */
  readonly draught: { readonly stack: number; readonly wind: number };
  /** m³/s: what is planned per person, the least by standard, and what holds the CO2 target for good */
  readonly planned: number;
  readonly least: number;
  readonly forTarget: number;
  readonly scenarios: readonly AirScenario[];
  readonly heat: {
    /** W */
    readonly people: number;
    readonly equipment: number;
    readonly latent: number;
    /** K over the outdoor air, once steady; null without flow */
    readonly rise: number | null;
    /** m³/s for the rise that is accepted */
    readonly flow: number;
  };
  /** null without flow */
  readonly moisture: RoomMoisture | null;
  readonly notes: readonly Note[];
}
