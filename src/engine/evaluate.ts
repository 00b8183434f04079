import type { Assembly } from './assembly/index.ts';
import type { PlanResult } from './plan/index.ts';
import type { Build, ShellResult } from './shell/index.ts';
import type { Prediction, Resolution } from './transmission/index.ts';

/** The corridor: calls the rooms in order and remembers what it computed for parts that have not changed. */
export interface Evaluator {
  /** R of an assembly as a laboratory would report it (4 × 2.5 m; glazing 1.48 × 1.23 m). */
  predict(assembly: Assembly, resolution: Resolution): Prediction;
  /** The whole shell, each part at its own size. */
  shell(build: Build, resolution: Resolution): ShellResult;
  /** Every single swap and every named option. */
  plan(build: Build, resolution: Resolution): PlanResult;
}
