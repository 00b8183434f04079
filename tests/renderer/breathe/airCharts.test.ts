import { describe, expect, it } from 'vitest';
import type { AirPlan, AirResult, PathFlow } from '../../../src/engine/airflow/index.ts';
import { carbonDioxideChart } from '../../../renderer/views/breathe/carbonDioxideChart.ts';
import { fanChart, flowWords } from '../../../renderer/views/breathe/fanChart.ts';

const fan = { flows: [0, 0.05, 0.1], fan: [200, 150, 0], loss: [0, 40, 160] };
const flow: PathFlow = { id: 'v', flow: 0.06, pieces: [], loss: 60, fanPressure: 120 };

describe('chart of a fan', () => {
  it('draws fan and losses, and what the room adds where the fan meets more than its vent takes', () => {
    const { series, points, x } = fanChart('Supply', flow, fan, 'metric');
    expect(series.map(({ label }) => label)).toEqual(['fan', 'losses', 'with the room']);
    expect(series[2]?.points[1]).toEqual([50, 100]);
    expect(points).toEqual([{ x: 60, y: 120, label: '60 L/s, 120 Pa' }]);
    expect(x.unit).toBe('L/s');
  });
  it('leaves the room out where it adds less than 1 Pa', () => {
    const { series } = fanChart('Supply', { ...flow, fanPressure: 60.5 }, fan, 'metric');
    expect(series).toHaveLength(2);
  });
  it('says in words where the fan works, and what moves the air without one', () => {
    expect(flowWords(flow, fan, 'supply', 'metric')).toMatch(/60 L\/s here.*60 Pa that push the air out of the room/);
    expect(flowWords({ ...flow, flow: 0 }, null, 'supply', 'metric')).toMatch(/no air moves/);
    expect(flowWords({ ...flow, flow: -0.02 }, null, 'extract', 'metric')).toMatch(/20 L\/s the wrong way/);
  });
});

describe('chart of CO2', () => {
  const course = (ppm: number) => ({ times: [0, 60], concentrations: [420, ppm], peak: ppm });
  const air = (ppm: number): AirResult =>
    ({ scenarios: [{ key: 'planned', name: 'As planned', course: course(ppm) }] }) as unknown as AirResult;
  const plan = { target: 900, session: [] } as unknown as AirPlan;
  const marks = { aim: 1000, poor: 1500, workLimit: 5000 };
  it('shows a target of one’s own beside the usual levels, and none far above the curves', () => {
    const low = carbonDioxideChart(air(1200), plan, marks);
    expect(low.levels.map(({ value }) => value)).toEqual([900, 1000, 1500]);
    expect(low.series[0]?.points[1]).toEqual([1, 1200]);
    expect(carbonDioxideChart(air(4500), plan, marks).levels.at(-1)?.value).toBe(5000);
  });
});
