import { describe, expect, test } from 'vitest';
import { orthonormal } from '../../../../src/engine/openings/box/basis.ts';
import { cubicSpline } from '../../../../src/engine/openings/box/cubicSpline.ts';
import { denseSolve } from '../../../../src/engine/openings/box/denseSolve.ts';
import { faceEndLength } from '../../../../src/engine/openings/box/faceEnd.ts';
import { gridLines } from '../../../../src/engine/openings/box/planGrid.ts';

/** Numbers from −1 to 1 that depend on place alone. */
const wave = (n: number): number => Math.sin(12.9898 * n + 4.1414);

describe('small tools', () => {
  test('dense elimination gives back what it was made from, rows exchanged where they must be', () => {
    const A = { rows: 2, columns: 2, re: Float64Array.of(0, 2, 1, 0), im: Float64Array.of(0, 0, 0, 1) };
    // x = (1 + j, 3): A·x = (6, 1 + j + 3j)
    const x = denseSolve(A, { rows: 2, columns: 1, re: Float64Array.of(6, 1), im: Float64Array.of(0, 4) });
    expect([...x.re, ...x.im].map((it) => Number(it.toFixed(12)))).toEqual([1, 3, 1, 0]);
  });
  test('a spline follows a cubic between and beyond its knots, with uneven knots and with few', () => {
    const cubic = (x: number): number => 2 - x + 3 * x ** 2 - 0.5 * x ** 3;
    const knots = [0, 0.3, 1, 1.2, 2.5, 3];
    const spline = cubicSpline(knots, knots.map(cubic));
    for (const x of [-0.2, 0, 0.15, 0.9, 1.1, 2, 2.9, 3.2]) expect(spline(x)).toBeCloseTo(cubic(x), 10);
    const bend = (x: number): number => 1 + x - x ** 2;
    expect(cubicSpline([0, 1, 3], [0, 1, 3].map(bend))(2)).toBeCloseTo(bend(2), 10);
    expect(cubicSpline([0, 2], [1, 5])(1)).toBeCloseTo(3, 12);
  });
  test('a basis is orthonormal and drops what depends on the others', () => {
    const column = (n: number): Float64Array => Float64Array.from({ length: 40 }, (_, i) => wave(i * n));
    const [a, b] = [column(1.7), column(2.9)];
    const sum = a.map((it, i) => it + 2 * (b[i] ?? 0));
    const basis = orthonormal([a.slice(), b.slice(), sum, column(4.3)]);
    expect(basis).toHaveLength(3);
    basis.forEach((p, i) =>
      basis.forEach((q, k) => {
        expect(p.reduce((all, it, n) => all + it * (q[n] ?? 0), 0)).toBeCloseTo(i === k ? 1 : 0, 12);
      }),
    );
  });
  test('grid lines stand on every edge, merged below 0.2 mm, and never farther apart than the cell', () => {
    const lines = gridLines([0.3, 0.3001, 0.1999, 0.9999], 1, 0.09);
    expect(lines.filter((it) => Math.abs(it - 0.3) < 1e-12)).toHaveLength(1);
    expect(lines).not.toContain(0.3001);
    expect([lines[0], lines.at(-1)]).toEqual([0, 1]);
    lines.slice(1).forEach((it, i) => expect(it - (lines[i] ?? 0)).toBeLessThan(0.0901));
  });
  test('the end correction of a duct in a flat face grows to that of a duct in a wall as the space grows high', () => {
    const area = Math.PI * 0.05 ** 2;
    const end = [0.15, 0.5, 2, 5].map((height) => faceEndLength(area, height));
    end.slice(1).forEach((it, i) => expect(it).toBeGreaterThan(end[i] ?? NaN));
    // piston in a baffle: 8a/3π (Rayleigh), reached from below
    expect((end.at(-1) ?? NaN) / ((8 * 0.05) / 3 / Math.PI)).toBeGreaterThan(0.9);
    expect((end.at(-1) ?? NaN) / ((8 * 0.05) / 3 / Math.PI)).toBeLessThan(1.02);
  });
});
