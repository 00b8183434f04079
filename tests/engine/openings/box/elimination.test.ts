import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxMesh } from '../../../../src/engine/openings/box/boxMesh.ts';
import type { BoxMesh } from '../../../../src/engine/openings/box/boxMesh.ts';
import { denseMatrix, denseSolve } from '../../../../src/engine/openings/box/denseSolve.ts';
import { dissection } from '../../../../src/engine/openings/box/dissection.ts';
import { frontTree, fullFront } from '../../../../src/engine/openings/box/frontTree.ts';
import { planGrid } from '../../../../src/engine/openings/box/planGrid.ts';
import { storePlaces } from '../../../../src/engine/openings/box/storePlaces.ts';
import { backSubstitute } from '../../../../src/engine/openings/box/treeBack.ts';
import { treeFactor, treeMatrix } from '../../../../src/engine/openings/box/treeFactor.ts';
import { repeatable } from '../../../support/repeatable.ts';

/** Numbers from −1 to 1 that depend on place alone. */
const wave = (n: number): number => Math.sin(12.9898 * n + 4.1414);

/** A box with walls across it that leave gaps, some thinner than a cell, one side or the other. */
const meshes = fc
  .record({
    length: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
    width: fc.double({ min: 0.08, max: 0.5, noNaN: true }),
    cell: fc.double({ min: 0.02, max: 0.05, noNaN: true }),
    walls: fc.array(
      fc.record({
        at: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        gap: fc.double({ min: 0.1, max: 0.8, noNaN: true }),
        near: fc.boolean(),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ length, width, cell, walls }) =>
    boxMesh(
      planGrid(
        {
          length,
          width,
          height: 0.15,
          base: { kind: 'air' },
          linings: [],
          solids: walls.map(({ at, gap, near }) => ({
            x0: at * length,
            x1: Math.min(length, at * length + 0.012),
            y0: near ? 0 : gap * width,
            y1: near ? (1 - gap) * width : width,
          })),
          ports: [
            { kind: 'side', side: 'W', centre: width / 2, width: width / 2, area: 0.01 },
            { kind: 'side', side: 'E', centre: width / 2, width: width / 2, area: 0.01 },
          ],
        },
        cell,
      ),
    ),
  );

/** Upper entries of a made-up matrix on the pattern of a mesh, its diagonal strong enough to need no pivoting. */
const entriesOf = (mesh: BoxMesh) =>
  mesh.entries.flatMap(({ row, column }) =>
    Array.from(row, (a, n) => {
      const b = column[n] ?? 0;
      return { a, b, re: wave(a * 71 + b) + (a === b ? 12 : 0), im: wave(a * 37 + 3 * b) + (a === b ? 6 : 0) };
    }),
  );

describe('the dissection of a box', () => {
  test('holds every node once, and neighbours are in one piece or one above the other', () => {
    fc.assert(
      fc.property(meshes, (mesh) => {
        const pieces = dissection(mesh);
        const all = pieces.flatMap(({ nodes }) => [...nodes]).sort((a, b) => a - b);
        expect(all).toEqual(Array.from({ length: mesh.unknowns }, (_, node) => node));
        const pieceOf = new Map(pieces.flatMap(({ nodes }, piece) => nodes.map((node) => [node, piece] as const)));
        const above = new Map(pieces.flatMap(({ below }, piece) => below.map((it) => [it, piece] as const)));
        const upFrom = (piece: number): number[] => [piece, ...[above.get(piece) ?? []].flat().flatMap(upFrom)];
        for (const { a, b } of entriesOf(mesh)) {
          const [one, other] = [pieceOf.get(a) ?? NaN, pieceOf.get(b) ?? NaN];
          expect(one <= other ? upFrom(one) : upFrom(other)).toContain(Math.max(one, other));
        }
      }),
      repeatable(20_263, 25),
    );
  });
});

describe('elimination front by front', () => {
  test('solves complex symmetric systems on any box, with right-hand sides that begin anywhere, to 1e-10', () => {
    fc.assert(
      fc.property(meshes, fc.integer({ min: 1, max: 5 }), (mesh, count) => {
        const tree = frontTree(mesh);
        const matrix = treeMatrix(tree);
        const entries = entriesOf(mesh);
        const places = storePlaces(tree, {
          row: Int32Array.from(entries, ({ a }) => a),
          column: Int32Array.from(entries, ({ b }) => b),
        });
        entries.forEach(({ re, im }, n) => {
          const at = places[n] ?? NaN;
          matrix.re[at] = (matrix.re[at] ?? NaN) + re;
          matrix.im[at] = (matrix.im[at] ?? NaN) + im;
        });
        const size = mesh.unknowns;
        const right = (node: number, c: number): { re: number; im: number } =>
          node % (c + 2) === 0 ? { re: wave(node + 100 * c), im: wave(node + 200 * c) } : { re: 0, im: 0 };
        const columns = { count, re: new Float64Array(size * count), im: new Float64Array(size * count) };
        for (let node = 0; node < size; node += 1)
          for (let c = 0; c < count; c += 1) {
            const at = (tree.number[node] ?? NaN) * count + c;
            columns.re[at] = right(node, c).re;
            columns.im[at] = right(node, c).im;
          }
        const inverse = treeFactor(matrix, columns);
        for (let c = 0; c < count; c += 1) {
          const pick = (from: Float64Array): Float64Array =>
            Float64Array.from({ length: size }, (_, n) => from[n * count + c] ?? NaN);
          const x = { re: pick(columns.re), im: pick(columns.im) };
          backSubstitute(matrix, inverse, x);
          const left = { re: new Float64Array(size), im: new Float64Array(size) };
          const multiply = (to: number, from: number, re: number, im: number): void => {
            const at = tree.number[from] ?? NaN;
            const [xr, xi] = [x.re[at] ?? NaN, x.im[at] ?? NaN];
            left.re[to] = (left.re[to] ?? NaN) + re * xr - im * xi;
            left.im[to] = (left.im[to] ?? NaN) + re * xi + im * xr;
          };
          for (const { a, b, re, im } of entries) {
            multiply(a, b, re, im);
            if (a !== b) multiply(b, a, re, im);
          }
          for (let node = 0; node < size; node += 1) {
            expect(Math.abs((left.re[node] ?? NaN) - right(node, c).re)).toBeLessThan(1e-10);
            expect(Math.abs((left.im[node] ?? NaN) - right(node, c).im)).toBeLessThan(1e-10);
          }
        }
      }),
      repeatable(20_261, 40),
    );
  });

  test('solves full systems of any size as dense elimination does', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 70 }), fc.integer({ min: 1, max: 4 }), (size, count) => {
        const matrix = treeMatrix(fullFront(size));
        const full = denseMatrix(size, size);
        for (let i = 0; i < size; i += 1)
          for (let k = i; k < size; k += 1) {
            const [re, im] = [wave(i * 71 + k) + (i === k ? 2 * size : 0), wave(i * 37 + 3 * k) + (i === k ? size : 0)];
            matrix.re[i * size + k] = re;
            matrix.im[i * size + k] = im;
            for (const place of [i * size + k, k * size + i]) [full.re[place], full.im[place]] = [re, im];
          }
        const right = denseMatrix(size, count);
        right.re.forEach((_, n) => ([right.re[n], right.im[n]] = [wave(n), wave(3 * n)]));
        const columns = { count, re: right.re.slice(), im: right.im.slice() };
        const inverse = treeFactor(matrix, columns);
        const expected = denseSolve(full, right);
        for (let c = 0; c < count; c += 1) {
          const pick = (from: Float64Array): Float64Array =>
            Float64Array.from({ length: size }, (_, n) => from[n * count + c] ?? NaN);
          const x = { re: pick(columns.re), im: pick(columns.im) };
          backSubstitute(matrix, inverse, x);
          for (let i = 0; i < size; i += 1) {
            expect(Math.abs((x.re[i] ?? NaN) - (expected.re[i * count + c] ?? NaN))).toBeLessThan(1e-10);
            expect(Math.abs((x.im[i] ?? NaN) - (expected.im[i * count + c] ?? NaN))).toBeLessThan(1e-10);
          }
        }
      }),
      repeatable(20_264, 40),
    );
  });
});
