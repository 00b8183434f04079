import type { Activity, AirResult } from '../../../src/engine/airflow/index.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { showFlow } from '../../text/showFlow.ts';

export const ACTIVITIES: readonly { readonly value: Activity; readonly label: string }[] = [
  { value: 'listening', label: 'listening, mixing' },
  { value: 'playing-seated', label: 'playing, seated' },
  { value: 'playing-standing', label: 'playing or singing, standing' },
  { value: 'drumming', label: 'drumming' },
  { value: 'dancing', label: 'dancing' },
];

/** Whether the air that comes in is enough: below the least there is, below what is planned, or enough. */
export type AirVerdict = 'nobody' | 'unsafe' | 'short' | 'enough';

const NEARLY = 0.98;

export const airVerdict = (air: AirResult): AirVerdict => {
  if (air.people === 0) return 'nobody';
  const { outdoorAir } = air.point;
  if (outdoorAir < NEARLY * air.least) return 'unsafe';
  return outdoorAir < NEARLY * Math.max(air.planned, air.least) ? 'short' : 'enough';
};

/** How much fresh air is needed, and how much there is, in a sentence. */
export const freshAirWords = (air: AirResult, units: LengthUnits): string => {
  const people = air.people === 1 ? '1 person needs' : `${air.people} people need`;
  const wanted = `${people} ${showFlow(Math.max(air.planned, air.least), units)} of fresh air`;
  const have = showFlow(air.point.outdoorAir, units);
  switch (airVerdict(air)) {
    case 'nobody':
      return 'Say who is in the room, and this tells how much fresh air they need.';
    case 'unsafe':
      return `${wanted}, ${showFlow(air.least, units)} at the very least; ${have} come in. That is too little to stay in.`;
    case 'short':
      return `${wanted}; ${have} come in. Enough to stay, not enough to play for long.`;
    case 'enough':
      return air.notes.some(({ code }) => code === 'carbon-dioxide')
        ? `${wanted}; ${have} come in. Enough to plan with, not enough to hold the CO2 aimed at.`
        : `${wanted}; ${have} come in. Enough.`;
  }
};

/** Flow that still enters quietly through a small room's vents, m³/s. @source engineering judgement */
const MOST_QUIET = 0.12;

/** Whether fresh air carries the heat off, in a sentence. @param mostRise accepted over the air that comes in, K */
export const heatWords = ({ rise, flow }: AirResult['heat'], mostRise: number): string => {
  if (rise === null) return 'No fresh air moves, so the heat stays in the room.';
  if (rise <= mostRise) return 'The fresh air alone carries the heat off.';
  return flow > MOST_QUIET
    ? 'Air alone cannot carry this off quietly: plan cooling, or stop when the room gets too hot.'
    : 'More fresh air would carry it off; or stop when the room gets too hot.';
};
