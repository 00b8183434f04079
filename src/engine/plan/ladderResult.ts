import type { Ratings } from '../ratings/index.ts';

/** One single swap and what it buys for the whole shell. */
export interface Rung {
  readonly part: string;
  readonly candidate: string;
  readonly name: string;
  readonly RwGain: number | null;
  readonly bassGain: number;
  /** change of 10 lg of the energy that gets out with the chosen source, dB; positive is less */
  readonly energyGain: number;
  /** null where a price is missing */
  readonly cost: number | null;
  readonly illustrative: boolean;
  /** m lost from the room or its outside; null for openings without a layup */
  readonly addedThickness: number | null;
  /** kg for the whole part */
  readonly addedMass: number | null;
  readonly gainPerCost: number | null;
  readonly gainPerThickness: number | null;
  readonly gainPerMass: number | null;
  /** part that limits once this is done */
  readonly nextLimiting: string | null;
  readonly nextLimitingShare: number;
}

/** A named set of swaps beside the build as it is. */
export interface OptionResult {
  readonly id: string;
  readonly name: string;
  readonly R: readonly number[];
  readonly ratings: Ratings;
  readonly bassR: number;
  readonly RwGain: number | null;
  readonly bassGain: number;
  readonly cost: number | null;
  readonly illustrative: boolean;
  readonly addedMass: number;
  readonly limiting: string | null;
}

/** The change to make first, and why it is that one. */
export interface NextStep {
  readonly part: string;
  readonly candidate: string;
  /**
   * `money`: buys most for its money of all that gain about 1 dB or more; `no-prices`: gains most, where none of those
   * has a price; `all-small`: gains most, where none gains as much
   */
  readonly reason: 'money' | 'no-prices' | 'all-small';
}

export interface PlanResult {
  /** ranked by energy gain, best first; the view may sort by any column */
  readonly rungs: readonly Rung[];
  readonly next: NextStep | null;
  readonly options: readonly OptionResult[];
}
