import { beforeAll, describe, expect, test } from 'vitest';
import { betweenRooms, solveBox } from '../../../src/engine/openings/index.ts';
import type { BoxResult, DuctEnd } from '../../../src/engine/openings/index.ts';
import { boxMesh } from '../../../src/engine/openings/box/boxMesh.ts';
import { solveLine } from '../../../src/engine/openings/box/boxSystem.ts';
import { directRoom } from '../../../src/engine/openings/box/directRoom.ts';
import { planGrid } from '../../../src/engine/openings/box/planGrid.ts';
import { meshPorts } from '../../../src/engine/openings/box/portShapes.ts';
import { planeBlock, powerShare } from '../../../src/engine/openings/box/scattering.ts';
import {
  DUCT_LENGTH,
  GOLDEN_BANDS,
  GOLDEN_CELL,
  differences,
  geometryOf,
  goldenBox,
  goldenBoxes,
  inFlatFace,
  linedFaces,
  meanOf,
} from './goldenBox.ts';
import type { GoldenBox } from './goldenBox.ts';

/** Whole curves take seconds; a busy machine takes longer. */
const PATIENCE = 180_000;

const solved = (box: GoldenBox, cellSize: number, bands: readonly number[] = GOLDEN_BANDS): BoxResult => {
  const result = solveBox(geometryOf(box), { cellSize, bands });
  if (result === null) throw new Error('was stopped');
  return result;
};

/** Relative error of S and error of the power through, by what the two programs do differently. */
const tolerances = (box: GoldenBox): { scattering: number; power: number } => {
  if (inFlatFace(box)) return { scattering: 0.035, power: 0.3 };
  return linedFaces(box) ? { scattering: 0.01, power: 0.06 } : { scattering: 5e-5, power: 0.001 };
};

describe('an independent wave solution on the same grid', () => {
  test('has thirteen boxes', () => {
    expect(goldenBoxes).toHaveLength(13);
  });
  test.each(goldenBoxes.map((box) => [box.name, box] as const))('agrees on %s low, middle and high', (_, box) => {
    const geometry = geometryOf(box);
    const mesh = boxMesh(planGrid(geometry, box.grid.h));
    const farthest = mesh.entries.map(({ row, column }) =>
      row.reduce((most, a, n) => Math.max(most, (column[n] ?? NaN) - a), 0),
    );
    expect([mesh.unknowns, Math.max(...farthest)]).toEqual([box.grid.N, box.grid.half_bandwidth]);
    const ports = meshPorts(geometry, mesh);
    const room = directRoom(mesh, ports);
    const { scattering: close, power } = tolerances(box);
    expect(box.spot).toHaveLength(6);
    for (const spot of [box.spot[1], box.spot[3], box.spot[5]]) {
      if (spot === undefined) throw new Error('a frequency is missing');
      const { scattering } = solveLine({ mesh, ports, height: geometry.height }, spot.f, room);
      const [s11, , s21] = planeBlock(scattering);
      const [r1 = NaN, i1 = NaN] = spot.S11;
      const [r2 = NaN, i2 = NaN] = spot.S21;
      expect(Math.hypot(s11.re - r1, s11.im - i1)).toBeLessThan(close);
      expect(Math.hypot(s21.re - r2, s21.im - i2)).toBeLessThan(close * Math.hypot(r2, i2));
      const modes = scattering.modes.flatMap((mode, n) => (mode.port === 0 && mode.propagates ? [n] : []));
      expect(modes).toHaveLength(spot.N1);
      const through = modes.reduce((sum, n) => sum + powerShare(scattering, ports, n, 1), 0);
      expect(Math.abs(10 * Math.log10(through / spot.T_sum))).toBeLessThan(power);
    }
  });
});

describe('whole curves, reduced basis below the cut-on', () => {
  const box = goldenBox('B07');
  let result: BoxResult;
  beforeAll(() => {
    result = solved(box, GOLDEN_CELL);
  }, PATIENCE);
  test('transmission loss agrees within 0.01 dB a band on the same grid', () => {
    expect(result.bands.map(({ band }) => band)).toEqual(GOLDEN_BANDS);
    const plane = differences(
      result.bands.map((it) => it.planeLoss),
      box.TL_plane,
    );
    const multimode = differences(
      result.bands.map((it) => it.multimodeLoss),
      box.TL_multimode,
    );
    expect(Math.max(...plane, ...multimode)).toBeLessThan(0.01);
  });

  test.each([
    [0, 'R_box', 'IL'],
    [0.01, 'R_box_r0.01', 'IL_r0.01'],
  ] as const)('between rooms too, with a mouth resistance of %s', (resistance, reduction, insertion) => {
    const end: DuctEnd = { area: geometryOf(box).ports[0].area, length: DUCT_LENGTH, resistance };
    const rooms = betweenRooms(result.bands, [end, end], DUCT_LENGTH);
    expect(Math.max(...differences(rooms.reduction, box[reduction]))).toBeLessThan(0.01);
    expect(Math.max(...differences(rooms.holeReduction, box.R_hole))).toBeLessThan(0.01);
    expect(Math.max(...differences(rooms.insertionLoss, box[insertion]))).toBeLessThan(0.01);
    // D_n,e = R + 10 lg(A0/S)
    const [first = NaN] = rooms.reduction;
    expect(rooms.normalisedDifference[0]).toBeCloseTo(first + 10 * Math.log10(10 / end.area), 9);
  });

  test(
    'a bare box agrees within 0.01 dB a band on the same grid',
    () => {
      const other = goldenBox('B04');
      const bands = [50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 5000];
      const curve = solved(other, GOLDEN_CELL, bands).bands.map((it) => it.multimodeLoss);
      const printed = bands.map((band) => other.TL_multimode[GOLDEN_BANDS.indexOf(band)] ?? NaN);
      expect(Math.max(...differences(curve, printed))).toBeLessThan(0.01);
    },
    PATIENCE,
  );

  test(
    'a grid of 10 mm stays within 0.5 dB on average and 1 dB a band up to 2.5 kHz (50 mm lining)',
    () => {
      const other = goldenBox('B08');
      const bands = GOLDEN_BANDS.slice(0, GOLDEN_BANDS.indexOf(2500) + 1);
      const curve = solved(other, 0.01, bands).bands.map((it) => it.multimodeLoss);
      const errors = differences(curve, other.TL_multimode.slice(0, bands.length));
      expect(errors).toHaveLength(18);
      expect(meanOf(errors)).toBeLessThan(0.5);
      expect(Math.max(...errors)).toBeLessThan(1);
    },
    PATIENCE,
  );
});
