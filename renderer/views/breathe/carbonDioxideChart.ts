import type { AirPlan, AirResult } from '../../../src/engine/airflow/index.ts';
import type { CarbonDioxideMarks } from '../../../src/worker/breathe/breatheAnswer.ts';
import { absences } from './sessionEdits.ts';

/** Over this share of the highest curve a level says nothing any more. */
const REACH = 1.25;

/** CO2 over the session: curves, the levels it is measured by, and when not everybody is in the room. */
export const carbonDioxideChart = (air: AirResult, plan: AirPlan, marks: CarbonDioxideMarks) => {
  const series = air.scenarios.map(({ name, key, course }) => ({
    label: name,
    points: course.times.map((time, i) => [time / 60, course.concentrations[i] ?? 0] as const),
    bold: key === 'planned',
  }));
  const highest = Math.max(1500, ...series.flatMap(({ points }) => points.map(([, ppm]) => ppm)));
  const levels = [
    ...(plan.target === marks.aim ? [] : [{ value: plan.target, label: `your target ${plan.target}` }]),
    { value: marks.aim, label: `${marks.aim} usual aim` },
    { value: marks.poor, label: `${marks.poor} act` },
    { value: marks.workLimit, label: `${marks.workLimit} work limit` },
  ].filter(({ value }) => value <= REACH * highest);
  return {
    title: 'CO2 over the session',
    series,
    levels,
    spans: absences(plan.session),
    x: { label: 'time', unit: 'min', step: 5, decimals: 0 },
    y: { label: 'CO2', unit: 'ppm', decimals: 0 },
    least: { x: 30, y: 1600 },
    cut: { y: 6000 },
  };
};
