import type { BoxField } from '../../src/engine/openings/index.ts';
import { levelRegions } from './levelRegions.ts';
import type { Box } from './section.ts';

/** Steps of ink between the loudest place and silence, dB each. */
export const FIELD_STEP = 6;
export const FIELD_STEPS = 7;
/** Share of ink at the loudest place. */
const MOST_INK = 0.62;

/** Level at every crossing of the grid, dB below the loudest; NaN inside boards. */
export const fieldLevels = ({ re, im, open }: BoxField): Float64Array => {
  const squares = re.map((value, i) => value * value + (im[i] ?? 0) ** 2);
  const most = squares.reduce((a, b) => Math.max(a, b), 1e-300);
  return squares.map((square, i) => (open[i] === 1 ? 10 * Math.log10(Math.max(square, 1e-12 * most) / most) : NaN));
};

/** Ink laid over what is quieter: a region, and how much of it. */
export interface FieldShade {
  /** steps below the loudest down to which the region goes */
  readonly step: number;
  readonly d: string;
  readonly ink: number;
}

/** The pressure as ink in steps, quiet ones first, each over the one before, and lines between the steps. */
export interface FieldDrawing {
  readonly shades: readonly FieldShade[];
  readonly lines: string;
}

/** Ink seen at a step; the last has none. */
const inkOf = (step: number): number => MOST_INK * (1 - step / (FIELD_STEPS - 1));

/**
 * @param field on the grid of its solution
 * @param area where the box is drawn, px: the field fills it, also one of a shape just left behind
 */
export const fieldDrawing = (field: BoxField, area: Box): FieldDrawing => {
  const [length = 1, width = 1] = [field.x.at(-1), field.y.at(-1)];
  const grid = {
    x: Float64Array.from(field.x, (x) => area.x + (x / length) * area.width),
    y: Float64Array.from(field.y, (y) => area.y + (1 - y / width) * area.height),
    levels: fieldLevels(field),
  };
  const steps = Array.from({ length: FIELD_STEPS - 1 }, (_, n) => FIELD_STEPS - 2 - n);
  const regions = levelRegions(
    grid,
    steps.map((step) => -FIELD_STEP * (step + 1)),
  );
  const shades = regions.map(({ area }, n): FieldShade => {
    const step = steps[n] ?? 0;
    // together with the ink beneath it makes what is seen at this step
    return { step, d: area, ink: 1 - (1 - inkOf(step)) / (1 - inkOf(step + 1)) };
  });
  return { shades, lines: regions.map(({ line }) => line).join('') };
};
