import { COARSE_PLAN, FINE_PLAN, boxSteps } from '../../src/engine/openings/index.ts';
import type { BoxGeometry, BoxLining, BoxPlan } from '../../src/engine/openings/index.ts';
import type { BenchRow } from './kernel.ts';
import { median } from './median.ts';

/** How fast a box of 1.2 × 0.4 m with three partitions and 25 mm lining is solved. */

const WOOL = { kind: 'porous', airflowResistivity: 10_000 } as const;
const lining = (x0: number, y0: number, x1: number, y1: number): BoxLining => ({ x0, y0, x1, y1, filling: WOOL });
const PARTITIONS = [
  { x0: 0.291, y0: 0, x1: 0.303, y1: 0.275 },
  { x0: 0.594, y0: 0.125, x1: 0.606, y1: 0.4 },
  { x0: 0.897, y0: 0, x1: 0.909, y1: 0.275 },
];
const hole = (x0: number, x1: number): BoxLining => ({ x0, x1, y0: 0.159094, y1: 0.240906, filling: { kind: 'air' } });

export const benchBox: BoxGeometry = {
  length: 1.2,
  width: 0.4,
  height: 0.15,
  base: { kind: 'air' },
  solids: PARTITIONS,
  linings: [
    lining(0, 0, 1.2, 0.025),
    lining(0, 0.375, 1.2, 0.4),
    lining(0, 0, 0.025, 0.4),
    lining(1.175, 0, 1.2, 0.4),
    ...PARTITIONS.flatMap(({ x0, y0, x1, y1 }) => [lining(x0 - 0.025, y0, x0, y1), lining(x1, y0, x1 + 0.025, y1)]),
    hole(0, 0.025),
    hole(1.175, 1.2),
  ],
  ports: [
    { kind: 'side', side: 'W', centre: 0.2, width: 0.081812, area: 0.012272 },
    { kind: 'side', side: 'E', centre: 0.2, width: 0.081812, area: 0.012272 },
  ],
};

/** Seconds of processor time, free of what else the machine is doing; the median of some runs. */
const timed = (runs: number, run: () => void): number =>
  median(
    Array.from({ length: runs }, () => {
      const start = process.cpuUsage();
      run();
      return process.cpuUsage(start).user / 1e6;
    }),
  );

const NUMBERS = Float64Array.from({ length: 64 }, (_, i) => Math.sin(i));

/**
 * A thousand million multiplications and additions on numbers close at hand: a busy machine is slower at this too, so
 * that times of different days can be compared by how often it goes into them.
 */
const yardstick = (): void => {
  let [a, b, c, d] = [0, 0, 0, 0];
  for (let turn = 0; turn < 15_625_000; turn += 1)
    for (let i = 0; i < 64; i += 4) {
      a += (NUMBERS[i] ?? 0) * 1.1;
      b += (NUMBERS[i + 1] ?? 0) * 1.1;
      c += (NUMBERS[i + 2] ?? 0) * 1.1;
      d += (NUMBERS[i + 3] ?? 0) * 1.1;
    }
  if (Number.isNaN(a + b + c + d)) throw new Error('the yardstick must give numbers');
};

const solve = (plan: BoxPlan): void => {
  const steps = boxSteps(benchBox, plan);
  while (!steps.next().done);
};

/** 21 bands of 2 lines, too few for a reduced basis: 42 solutions of the whole grid, twice. */
const direct = (cellSize: number) => (): void => {
  solve({ ...COARSE_PLAN, cellSize: () => cellSize });
  solve({ ...COARSE_PLAN, cellSize: () => cellSize });
};

/** The rows that the bench prints; aims are twice what native banded code takes for the same unknowns. */
export const boxBench = (): BenchRow[] => {
  direct(0.02)();
  return [
    { name: 'yardstick', value: timed(3, yardstick), unit: 's', target: 0.5 },
    { name: 'box, 84 frequencies, 20 mm', value: timed(9, direct(0.02)), unit: 's', target: 0.24 },
    { name: 'box, 84 frequencies, 10 mm', value: timed(5, direct(0.01)), unit: 's', target: 1.34 },
    { name: 'box, 84 frequencies, 6 mm', value: timed(3, direct(0.006)), unit: 's', target: 9.6 },
    { name: 'box, coarse plan', value: timed(9, () => solve(COARSE_PLAN)), unit: 's', target: 0.3 },
    { name: 'box, fine plan', value: timed(3, () => solve(FINE_PLAN)), unit: 's', target: 3 },
  ];
};

/** Processor time, s. */
export const boxSpeeds = () => {
  const rows = new Map(boxBench().map(({ name, value }) => [name, value]));
  return {
    yardstick_s: rows.get('yardstick') ?? NaN,
    box_84_20mm_s: rows.get('box, 84 frequencies, 20 mm') ?? NaN,
    box_84_10mm_s: rows.get('box, 84 frequencies, 10 mm') ?? NaN,
    box_84_6mm_s: rows.get('box, 84 frequencies, 6 mm') ?? NaN,
    box_coarse_s: rows.get('box, coarse plan') ?? NaN,
    box_fine_s: rows.get('box, fine plan') ?? NaN,
  };
};

if (import.meta.main)
  for (const row of boxBench())
    console.log(`${row.name.padEnd(40)} ${row.value.toFixed(2).padStart(8)} ${row.unit} (aim ${row.target})`);
