import type { AirPlan } from '../../engine/airflow/index.ts';
import type { BreatheResult } from '../../engine/breatheResult.ts';
import type { BoxResult, VentBox } from '../../engine/openings/index.ts';

/** Points of fan and losses over flow, for drawing: m³/s, Pa. */
export interface FanDrawing {
  readonly flows: readonly number[];
  readonly fan: readonly number[];
  readonly loss: readonly number[];
}

/** Curves of a vent as the station draws them, dB per third octave. */
export interface VentDrawn {
  readonly id: string;
  /** null without a fan */
  readonly fan: FanDrawing | null;
  /** Dn,e along the air, through boards and duct walls together, and past the joints; null where there is no such way */
  readonly along: readonly number[];
  readonly walls: readonly number[] | null;
  readonly joints: readonly number[] | null;
  /** Dn,e with the handbook's chain in place of the wave solution; null without a box */
  readonly handbook: readonly number[] | null;
  /** R of the wall with this vent alone */
  readonly wallWith: readonly number[] | null;
}

/** A wall with vents in it. */
export interface WallDrawn {
  readonly surface: string;
  /** R of the wall with all its vents, dB per third octave */
  readonly withAll: readonly number[];
}

/** CO2 marked on the chart, ppm. */
export interface CarbonDioxideMarks {
  readonly aim: number;
  readonly poor: number;
  readonly workLimit: number;
}

/** Everything that Breathe shows and that follows from the project. */
export interface BreatheAnswer {
  readonly result: BreatheResult;
  /** null where the size of the room is not known */
  readonly plan: AirPlan | null;
  readonly drawn: readonly VentDrawn[];
  readonly walls: readonly WallDrawn[];
  readonly marks: CarbonDioxideMarks;
  /** water that people give off, kg/h */
  readonly water: number;
}

/** A box with its fine solution, as the box worker has found it. */
export interface SolvedBox {
  readonly box: VentBox;
  readonly result: BoxResult;
}
