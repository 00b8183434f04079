import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';

/** Where everything on a chart of one quantity over another goes, in px from the upper left corner. */
export interface PlaneFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xTicks: readonly PlaneTick[];
  readonly yTicks: readonly PlaneTick[];
  readonly most: { readonly x: number; readonly y: number };
  x(value: number): number;
  y(value: number): number;
  /** value of the horizontal quantity under a position */
  valueAt(px: number): number;
}

export interface PlaneTick {
  readonly at: number;
  readonly label: string;
}

/** A curve of an air chart, points in the units of its axes. */
export interface PlaneSeries {
  readonly label: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly dash?: string;
  /** heavier than the others; the first one where none is said to be */
  readonly bold?: boolean;
}

/** A level line across the chart. */
export interface PlaneLevel {
  readonly value: number;
  readonly label: string;
}

/** A place of the chart, named. */
export interface PlanePoint {
  readonly x: number;
  readonly y: number;
  readonly label: string;
}

/** A stretch of the horizontal axis, named. */
export interface PlaneSpan {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** What an axis counts, and how finely it is told. */
export interface PlaneAxis {
  readonly label: string;
  readonly unit: string;
  readonly decimals: number;
}

const MARGIN = { left: 44, top: 10, bottom: 34 };

const ticksOf = (scale: (value: number) => number, values: readonly number[]): readonly PlaneTick[] =>
  values.map((value) => ({ at: scale(value), label: String(value).replace('-', '\u2212') }));

/** Lays out an air chart from zero; the axes end at the next tick over what is drawn. @param labels room at the right, px */
export const planeFrame = (
  space: { readonly width: number; readonly height: number; readonly labels: number },
  most: { readonly x: number; readonly y: number },
): PlaneFrame => {
  const right = Math.max(MARGIN.left + 60, space.width - space.labels);
  const bottom = Math.max(MARGIN.top + 40, space.height - MARGIN.bottom);
  const across = scaleLinear([0, most.x > 0 ? most.x : 1], [MARGIN.left, right]);
  const up = scaleLinear([0, most.y > 0 ? most.y : 1], [bottom, MARGIN.top]).nice(5);
  const [, top = 1] = up.domain();
  return {
    width: space.width,
    height: space.height,
    left: MARGIN.left,
    right,
    top: MARGIN.top,
    bottom,
    xTicks: ticksOf(across, across.ticks(Math.max(3, Math.round((right - MARGIN.left) / 60)))),
    yTicks: ticksOf(up, up.ticks(5)),
    most: { x: across.domain()[1] ?? 1, y: top },
    x: (value) => across(value),
    y: (value) => up(Math.min(top, Math.max(0, value))),
    valueAt: (px) => Math.min(across.domain()[1] ?? 1, Math.max(0, across.invert(px))),
  };
};

/** The curve as a path, cut off at the frame. */
export const planePath = ({ points }: PlaneSeries, frame: PlaneFrame): string =>
  line<readonly [number, number]>(
    (point) => frame.x(point[0]),
    (point) => frame.y(point[1]),
  ).defined((point) => point[0] <= frame.most.x + 1e-9 && point[1] <= frame.most.y * 1.0001)(points) ?? '';

/** Value of a curve between its points; null outside them. */
export const valueOn = ({ points }: PlaneSeries, x: number): number | null => {
  const next = points.findIndex((point) => point[0] >= x - 1e-9);
  const [after, before] = [points[next], points[next - 1]];
  if (!after) return null;
  if (!before) return Math.abs(after[0] - x) < 1e-6 ? after[1] : null;
  const share = (x - before[0]) / (after[0] - before[0]);
  return before[1] + share * (after[1] - before[1]);
};

/** The largest value of some curves and levels, with a little head room. */
export const mostOf = (
  series: readonly PlaneSeries[],
  levels: readonly PlaneLevel[] = [],
): { x: number; y: number } => {
  const points = series.flatMap((one) => one.points);
  return {
    x: Math.max(0, ...points.map((point) => point[0])),
    y: 1.05 * Math.max(0, ...points.map((point) => point[1]), ...levels.map((level) => level.value)),
  };
};
