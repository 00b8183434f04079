import type { Weather } from './naturalDraught.ts';
import type { PeopleGroup } from './people.ts';

/** A stretch of a session. */
export interface SessionStep {
  readonly name: string;
  /** s, > 0 */
  readonly duration: number;
  /** share of the people who are in the room, 0 to 1 */
  readonly presence: number;
  readonly door: 'closed' | 'open';
  readonly fan: boolean;
}

/** Everything about the room that its air depends on, besides the vents. SI; temperatures in °C. */
export interface AirPlan extends Weather {
  /** m³, > 0 */
  readonly volume: number;
  /** m², > 0 */
  readonly floor: number;
  readonly people: readonly PeopleGroup[];
  readonly session: readonly SessionStep[];
  /** CO2 not to be passed, ppm */
  readonly target: number;
  /** CO2 outdoors, ppm */
  readonly outdoor: number;
  /** fresh air to plan with, m³/s per person */
  readonly perPerson: number;
  /** air changes per hour at 50 Pa; 0 for a sealed shell */
  readonly changesAt50: number;
  /** % */
  readonly outdoorHumidity: number;
  /** heat of amplifiers, lamps and the like, W */
  readonly equipment: number;
  /** rise over outdoor air that is accepted, K */
  readonly mostRise: number;
  /** of the door that is opened, m; null without one */
  readonly door: { readonly width: number; readonly height: number } | null;
}
