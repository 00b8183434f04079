import { createPredictor } from '../../src/engine/transmission/index.ts';
import type { Predictor, Resolution } from '../../src/engine/transmission/index.ts';
import type { Assembly } from '../../src/engine/assembly/index.ts';

/** How fast a part is predicted: time per point of frequency × angle, and per whole curve. */

const board = (thickness: number): Assembly['layers'][number] => ({
  kind: 'board',
  material: {
    kind: 'board',
    family: 'gypsum',
    name: 'gypsum board',
    density: 720,
    youngsModulus: 2.5e9,
    poissonRatio: 0.3,
    lossFactor: 0.0125,
  },
  thickness,
});

/** A wall of the same kind that has never been asked for: an edit changes the make-up, so nothing is remembered of it. */
const studWall = (i: number): Assembly => ({
  name: 'two and two boards on steel studs, filled',
  layers: [
    board(0.0125),
    board(0.015 + 1e-6 * i),
    {
      kind: 'cavity',
      depth: 0.1,
      fill: { material: { kind: 'porous', name: 'wool', density: 16, airflowResistivity: 8000 }, thickness: 0.1 },
      frame: {
        stud: 'steel',
        arrangement: 'common',
        fixing: 'direct',
        spacing: 0.6,
        barSpacing: 0.6,
        gauge: 0.0005,
      },
    },
    board(0.0125),
    board(0.0125),
  ],
});

const median = (values: number[]): number => {
  values.sort((a, b) => a - b);
  return values[Math.floor(values.length / 2)] ?? NaN;
};

const timed = (runs: number, run: (i: number) => void): number =>
  median(
    Array.from({ length: runs }, (_, i) => {
      const start = performance.now();
      run(i);
      return performance.now() - start;
    }),
  );

/** Points of a curve: bands × lines × angles. */
const POINTS: Record<Resolution, number> = { draft: 27 * 6 * 90, full: 27 * 12 * 160 };

export interface BenchRow {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target: number;
}

/** The rows that the bench prints, medians. */
export const kernelBench = (): BenchRow[] => {
  const predictor: Predictor = createPredictor();
  let walls = 0;
  const known = (resolution: Resolution) => (): void => {
    predictor.predict(studWall((walls += 1)), { resolution });
  };
  const fresh =
    (resolution: Resolution, from: number) =>
    (i: number): void => {
      predictor.predict(studWall((walls += 1)), { resolution, size: [from + 0.013 * i, 2.4] });
    };
  timed(30, known('full'));
  timed(10, fresh('full', 2));
  const full = timed(60, known('full'));
  const draft = timed(100, known('draft'));
  return [
    { name: 'point of frequency and angle', value: (full * 1e6) / POINTS.full, unit: 'ns', target: 180 },
    { name: 'curve at full resolution, size known', value: full, unit: 'ms', target: 10 },
    { name: 'curve at full resolution, new size', value: timed(40, fresh('full', 3)), unit: 'ms', target: 10 },
    { name: 'curve at draft resolution, size known', value: draft, unit: 'ms', target: 3 },
    { name: 'curve at draft resolution, new size', value: timed(60, fresh('draft', 4)), unit: 'ms', target: 10 },
  ];
};

if (import.meta.main)
  for (const row of kernelBench())
    console.log(`${row.name.padEnd(40)} ${row.value.toFixed(2).padStart(8)} ${row.unit} (aim ${row.target})`);
