import type { PathFlow } from '../../../src/engine/airflow/index.ts';
import type { FanDrawing } from '../../../src/worker/breathe/breatheAnswer.ts';
import type { LengthUnits } from '../../store/preferences.svelte.ts';
import { flowIn, flowUnit, showFlow } from '../../text/showFlow.ts';

/** What the fan has to overcome besides the vent, Pa: the room stands over or under outdoors when its other vent resists. */
const roomPressure = (flow: PathFlow): number => {
  const pressure = flow.flow > 0 ? flow.fanPressure - flow.loss : 0;
  return Math.abs(pressure) >= 1 ? pressure : 0;
};

/** The fan's pressure over its flow against what the vent takes, and where the two meet. */
export const fanChart = (name: string, flow: PathFlow, fan: FanDrawing, units: LengthUnits) => {
  const room = roomPressure(flow);
  const curve = (values: readonly number[]): readonly (readonly [number, number])[] =>
    fan.flows.flatMap((q, i) => {
      const value = values[i];
      return value === undefined || value < 0 ? [] : [[flowIn(q, units), value] as const];
    });
  const label = `${showFlow(flow.flow, units)}, ${flow.fanPressure.toFixed(0)} Pa`;
  return {
    title: `Fan against losses, ${name}`,
    series: [
      { label: 'fan', points: curve(fan.fan) },
      { label: 'losses', points: curve(fan.loss) },
      ...(room === 0 ? [] : [{ label: 'with the room', points: curve(fan.loss.map((loss) => loss + room)) }]),
    ],
    points: flow.flow > 0 ? [{ x: flowIn(flow.flow, units), y: flow.fanPressure, label }] : [],
    x: { label: 'air', unit: flowUnit(units), step: units === 'imperial' ? 10 : 5, decimals: 0 },
    y: { label: 'pressure', unit: 'Pa', decimals: 0 },
    cut: { y: Math.max(5, ...fan.fan) * 1.15 },
  };
};

/** Where the fan works, or what moves the air without one, in sentences. */
export const flowWords = (
  flow: PathFlow,
  fan: FanDrawing | null,
  direction: 'supply' | 'extract',
  units: LengthUnits,
): string => {
  if (!fan) {
    const moves = flow.flow < 0 ? 'the wrong way' : direction === 'supply' ? 'come in' : 'go out';
    return flow.flow === 0
      ? 'No fan in this vent: no air moves through it by itself.'
      : `No fan in this vent: ${showFlow(Math.abs(flow.flow), units)} ${moves}, moved by the other vent's fan or by the weather.`;
  }
  const room = roomPressure(flow);
  const way = direction === 'supply' ? 'push the air out of' : 'draw the air into';
  const besides = room === 0 ? '' : `, and ${Math.abs(room).toFixed(0)} Pa that ${way} the room through its other ways`;
  return `The fan moves ${showFlow(flow.flow, units)} here: where its pressure equals what the vent takes${besides}. The figure on a fan's box is for no resistance at all.`;
};
