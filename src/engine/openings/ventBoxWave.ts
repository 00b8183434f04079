import { AIR_IMPEDANCE, complex, minus, over, plus, scaled, sectionArea, times } from '../quantities/index.ts';
import type { Complex } from '../quantities/index.ts';
import { complexSpline } from './box/cubicSpline.ts';
import { BOX_BANDS, COARSE_PLAN, boxSteps } from './box/index.ts';
import type { BoxGeometry, BoxPlan, BoxResult } from './box/index.ts';
import type { FourPole } from './fourPole.ts';
import type { VentBox } from './ventElement.ts';
import type { BoxSound } from './ventBoxSound.ts';
import { ventBoxGeometry } from './ventBoxGeometry.ts';

/** Solves the sound field in a box; handed in, so that the caller may remember it or show how far it is. */
export type BoxSolver = (geometry: BoxGeometry) => BoxResult;

/** Cells of a small box, and the coarsest of a large one, m. */
const [FINE, COARSEST] = [0.01, 0.015];
/** Plan that is solved with the finest cells, m²: beyond it they grow with the box, for the work grows by its square. */
const SMALL = 0.5;

/**
 * A grid that settles what a casing of boards leaves to be settled: within about 1 dB to 2.5 kHz, 2.5 dB to 5 kHz for
 * boxes up to 0.5 m² in plan; twice that for the largest, whose joints and boards let more through there.
 */
export const ventBoxPlan = ({ length, width }: { readonly length: number; readonly width: number }): BoxPlan => {
  const cell = Math.min(COARSEST, FINE * Math.max(1, Math.sqrt((length * width) / SMALL)));
  return { bands: BOX_BANDS, cellSize: () => cell, lines: (band) => (band < 1600 ? 6 : 3), inside: true };
};

const runThrough = (geometry: BoxGeometry, plan: BoxPlan): BoxResult => {
  const steps = boxSteps(geometry, plan);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
};

/** The wave solution on the grid to rely on. @throws RangeError for a box that cannot be built */
export const solveBoxWhole: BoxSolver = (geometry) => runThrough(geometry, ventBoxPlan(geometry));

/** The same on the coarse grid, while something is being dragged: 1.5 dB rms. */
export const solveBoxCoarse: BoxSolver = (geometry) => runThrough(geometry, { ...COARSE_PLAN, inside: true });

/**
 * Transfer matrix from the scattering of pressure waves:
 * with p = a + b, U = (a − b)·S/ρc at either port, outwards positive at the second.
 */
const poleOf = (
  { s11, s12, s21, s22 }: Readonly<Record<'s11' | 's12' | 's21' | 's22', Complex>>,
  Z1: number,
  Z2: number,
): FourPole => {
  const one = complex(1);
  const product = times(s12, s21);
  const half = over(complex(0.5), s21);
  const [p1, m1, p2, m2] = [plus(one, s11), minus(one, s11), plus(one, s22), minus(one, s22)];
  return {
    a: times(half, plus(times(p1, m2), product)),
    b: scaled(times(half, minus(times(p1, p2), product)), Z2),
    c: scaled(times(half, minus(times(m1, m2), product)), 1 / Z1),
    d: scaled(times(half, plus(times(m1, p2), product)), Z2 / Z1),
  };
};

/**
 * A baffled box from its wave solution: plane block of S over ln f by cubic splines, all modes by bands.
 * @param box m
 * @param solve the solver
 * @returns its sound
 * @throws RangeError for a box that cannot be built
 * @validity as boxSteps
 * @source lined, baffled box by finite elements; S to T: two-port theory
 */
export const waveBoxSound = (box: VentBox, solve: BoxSolver): BoxSound => {
  const { bands } = solve(ventBoxGeometry(box));
  const lines = bands.flatMap((band) => band.lines);
  const at = lines.map(({ frequency }) => Math.log(frequency));
  const spline = (key: 's11' | 's12' | 's21' | 's22') =>
    complexSpline(
      at,
      lines.map(({ plane }) => plane[key]),
    );
  const [s11, s12, s21, s22] = [spline('s11'), spline('s12'), spline('s21'), spline('s22')];
  const [Z1, Z2] = box.ports.map(({ section }) => AIR_IMPEDANCE / sectionArea(section));
  const insides = bands.map(({ lines: own }) => own.flatMap(({ inside }) => (inside ? [inside.meanSquare] : [])));
  const mean = (pairs: readonly (readonly [number, number])[], which: 0 | 1): number =>
    pairs.reduce((sum, pair) => sum + pair[which], 0) / pairs.length;
  return {
    pole: (frequency) => {
      const x = Math.log(frequency);
      return poleOf({ s11: s11(x), s12: s12(x), s21: s21(x), s22: s22(x) }, Z1 ?? 1, Z2 ?? 1);
    },
    bands: bands.map(({ band }) => band),
    transmission: bands.map(({ multimodeLoss }) => Math.min(1, 10 ** (-multimodeLoss / 10))),
    meanSquare: insides.every((pairs) => pairs.length > 0)
      ? insides.map((pairs) => [mean(pairs, 0), mean(pairs, 1)] as const)
      : null,
    estimate: false,
  };
};
