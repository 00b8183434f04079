import type { BoxField } from '../../src/engine/openings/index.ts';
import type { PlanView } from './boxPlan.ts';

/** Steps of ink between the loudest place and silence, dB each. */
export const FIELD_STEP = 6;
export const FIELD_STEPS = 7;

/** Level at every crossing of the grid, dB below the loudest; null inside boards. */
export const fieldLevels = ({ re, im, open }: BoxField): readonly (number | null)[] => {
  const squares = Array.from(re, (value, i) => value * value + (im[i] ?? 0) ** 2);
  const most = Math.max(...squares, 1e-300);
  return squares.map((square, i) => (open[i] === 1 ? 10 * Math.log10(Math.max(square, 1e-12 * most) / most) : null));
};

/** Ink of one step: how many steps below the loudest, and the cells that lie in it, as one path. */
export interface FieldShade {
  readonly step: number;
  readonly d: string;
}

const stepOf = (level: number): number => Math.min(FIELD_STEPS - 1, Math.floor(-level / FIELD_STEP));

/** Cells of the grid by steps of level, row by row in runs. */
export const fieldShades = (field: BoxField, view: PlanView): readonly FieldShade[] => {
  const levels = fieldLevels(field);
  const rows = field.y.length;
  const at = (i: number, j: number): number | null => levels[i * rows + j] ?? null;
  const paths = Array.from({ length: FIELD_STEPS }, () => '');
  const fixed = (value: number): string => value.toFixed(1);
  const columns = field.x.length - 1;
  const stepAt = (i: number, j: number): number | null => {
    const known = [at(i, j), at(i + 1, j), at(i, j + 1), at(i + 1, j + 1)].filter((level) => level !== null);
    return known.length === 4 ? stepOf(known.reduce((sum, level) => sum + level, 0) / 4) : null;
  };
  for (let j = 0; j + 1 < rows; j += 1) {
    let from = 0;
    for (let i = 0; i < columns; i += 1) {
      const step = stepAt(i, j);
      if (i + 1 < columns && stepAt(i + 1, j) === step) continue;
      const [x0, x1] = [field.x[from] ?? 0, field.x[i + 1] ?? 0];
      from = i + 1;
      if (step === null) continue;
      const { x, y, width, height } = view.screen({ x0, x1, y0: field.y[j] ?? 0, y1: field.y[j + 1] ?? 0 });
      paths[step] = `${paths[step] ?? ''}M${fixed(x)},${fixed(y)}h${fixed(width)}v${fixed(height)}h${fixed(-width)}z`;
    }
  }
  return paths.flatMap((d, step) => (d === '' ? [] : [{ step, d }]));
};

/** Lines of equal level, every FIELD_STEP dB, by straight pieces through the cells. */
export const fieldLines = (field: BoxField, view: PlanView): string => {
  const levels = fieldLevels(field);
  const rows = field.y.length;
  const pieces: string[] = [];
  for (let i = 0; i + 1 < field.x.length; i += 1)
    for (let j = 0; j + 1 < rows; j += 1) {
      const corners = [
        { i, j },
        { i: i + 1, j },
        { i: i + 1, j: j + 1 },
        { i, j: j + 1 },
      ].map((corner) => ({
        x: field.x[corner.i] ?? 0,
        y: field.y[corner.j] ?? 0,
        level: levels[corner.i * rows + corner.j] ?? null,
      }));
      if (corners.some(({ level }) => level === null)) continue;
      for (let step = 1; step < FIELD_STEPS; step += 1) {
        const wanted = -step * FIELD_STEP;
        const crossings = corners.flatMap((from, n) => {
          const to = corners[(n + 1) % 4];
          if (!to || from.level === null || to.level === null || from.level > wanted === to.level > wanted) return [];
          const share = (wanted - from.level) / (to.level - from.level);
          return [view.point(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))];
        });
        for (let n = 0; n + 1 < crossings.length; n += 2) {
          const [a, b] = [crossings[n], crossings[n + 1]];
          if (a && b) pieces.push(`M${a.x.toFixed(1)},${a.y.toFixed(1)}L${b.x.toFixed(1)},${b.y.toFixed(1)}`);
        }
      }
    }
  return pieces.join('');
};
