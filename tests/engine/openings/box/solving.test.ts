import { describe, expect, test } from 'vitest';
import {
  BOX_BANDS,
  COARSE_PLAN,
  boxFaults,
  boxField,
  boxSteps,
  breakInAreas,
  solveBox,
} from '../../../../src/engine/openings/index.ts';
import type { BoxBand, BoxGeometry } from '../../../../src/engine/openings/index.ts';
import { AIR } from '../../../../src/engine/openings/box/boxGeometry.ts';
import { geometryOf, goldenBox } from '../../../reference/linedBox/goldenBox.ts';
import { chamber, solvedAt } from './ducts.ts';

const lined = geometryOf(goldenBox('B07'));

describe('the reduced basis', () => {
  test.each(['B02', 'B04', 'B07', 'B16', 'B17'])(
    'agrees with direct solutions within 0.05 dB at every line (%s)',
    (name) => {
      const geometry = geometryOf(goldenBox(name));
      const bands = [50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600];
      const whole = solveBox(geometry, { cellSize: 0.02, bands, frequenciesPerBand: 15 });
      // one band alone has too few lines for a basis
      for (const band of [63, 500, 1250, 1600]) {
        const alone = solveBox(geometry, { cellSize: 0.02, bands: [band], frequenciesPerBand: 15 });
        const [lines = [], direct = []] = [whole, alone].map((it) => it?.bands.find((one) => one.band === band)?.lines);
        expect(direct).toHaveLength(15);
        direct.forEach((line, i) => {
          expect(Math.abs(10 * Math.log10((lines[i]?.planeToPlane ?? NaN) / line.planeToPlane))).toBeLessThan(0.05);
        });
      }
    },
  );
  test('keeps the energy and the pressure inside as the direct solution does', () => {
    const bands = [125, 160, 200, 250, 315];
    const whole = solvedAt(lined, 0.02, bands, 24);
    const alone = solvedAt(lined, 0.02, [200], 3);
    expect(whole.imbalance).toBeLessThan(2e-3);
    const middle = (found: typeof alone, i: number): number =>
      found.bands.find(({ band }) => band === 200)?.lines[i]?.inside?.meanSquare[1] ?? NaN;
    // line 12 of 24 lies beside the middle one of 3
    expect(middle(whole, 12) / middle(alone, 1)).toBeGreaterThan(0.97);
    expect(middle(whole, 12) / middle(alone, 1)).toBeLessThan(1.03);
  });
});

describe('solving', () => {
  test('hands over the low bands first, tells how far it is, and stops when told to', () => {
    const seen: [number, number][] = [];
    const stopped = solveBox(lined, {
      cellSize: 0.02,
      frequenciesPerBand: 2,
      onBand: ({ band }: BoxBand, fraction) => {
        seen.push([band, fraction]);
        return seen.length < 5;
      },
    });
    expect(stopped).toBeNull();
    expect(seen.map(([band]) => band)).toEqual(BOX_BANDS.slice(0, 5));
    seen.slice(1).forEach(([, fraction], i) => expect(fraction).toBeGreaterThan(seen[i]?.[1] ?? NaN));
  });
  test('the steps of a plan end at 1 and never run backwards, with a basis and two grids too', () => {
    const plan = {
      bands: [500, 630, 800, 5000],
      inside: false,
      cellSize: (band: number) => (band > 1000 ? 0.015 : 0.02),
      lines: () => 24,
    };
    const fractions = [...boxSteps(lined, plan)].map(({ fraction }) => fraction);
    fractions.slice(1).forEach((it, i) => expect(it).toBeGreaterThanOrEqual(fractions[i] ?? NaN));
    expect(fractions.at(-1)).toBeCloseTo(1, 9);
  });
  test('while dragging, the coarse plan is within 2 dB rms of the reference up to 2.5 kHz', () => {
    const coarse = solveBox(lined, { cellSize: COARSE_PLAN.cellSize, frequenciesPerBand: COARSE_PLAN.lines });
    const { TL_multimode: reference } = goldenBox('B07');
    const errors = (coarse?.bands ?? [])
      .slice(0, 18)
      .map(({ multimodeLoss }, i) => multimodeLoss - (reference[i] ?? NaN));
    expect(errors).toHaveLength(18);
    expect(Math.sqrt(errors.reduce((sum, it) => sum + it ** 2, 0) / 18)).toBeLessThan(2);
  });
  test('the pressure for drawing starts near that of the arriving wave and fades through a lined box', () => {
    const field = boxField(lined, 0.02, 1000, 0);
    expect(field.re).toHaveLength(field.x.length * field.y.length);
    const level = (from: number, to: number): number => {
      let sum = 0;
      let count = 0;
      field.x.forEach((x, i) => {
        if (x < from || x > to) return;
        field.y.forEach((_, j) => {
          const at = i * field.y.length + j;
          if (field.open[at] !== 1) return;
          sum += (field.re[at] ?? NaN) ** 2 + (field.im[at] ?? NaN) ** 2;
          count += 1;
        });
      });
      return 10 * Math.log10(sum / count);
    };
    expect(level(0, 0.29)).toBeGreaterThan(level(0.31, 0.59) + 6);
    expect(level(0.31, 0.59)).toBeGreaterThan(level(0.91, 1.2) + 6);
  });
  test('what lies inside a thick solid is not open and carries no pressure', () => {
    const blocked = { ...chamber(0.6, 0.3, 0.1), solids: [{ x0: 0.2, y0: 0, x1: 0.4, y1: 0.1 }] };
    const { x, y, open, re } = boxField(blocked, 0.02, 500, 1);
    const at = x.findIndex((it) => it > 0.29) * y.length + y.findIndex((it) => it > 0.03);
    expect([open[at], re[at]]).toEqual([0, 0]);
  });
  test('is the same box lying and standing, mirrored and turned', () => {
    const turned: BoxGeometry = {
      ...lined,
      length: lined.width,
      width: lined.length,
      solids: lined.solids.map(({ x0, y0, x1, y1 }) => ({ x0: y0, y0: x0, x1: y1, y1: x1 })),
      linings: lined.linings.map(({ x0, y0, x1, y1, filling }) => ({ x0: y0, y0: x0, x1: y1, y1: x1, filling })),
      ports: [
        { kind: 'side', side: 'S', centre: 0.2, width: 0.081812, area: 0.012272 },
        { kind: 'side', side: 'N', centre: 0.2, width: 0.081812, area: 0.012272 },
      ],
    };
    const loss = (geometry: BoxGeometry): number[] =>
      solvedAt(geometry, 0.02, [63, 500, 4000], 2).bands.map((it) => it.multimodeLoss);
    loss(turned).forEach((it, i) => expect(it).toBeCloseTo(loss(lined)[i] ?? NaN, 6));
  });
});

describe('the way in through the walls', () => {
  test('leaves 10 dB at 500 Hz and 17 dB at 2 kHz on the way out of an empty lined box (own figures of the method)', () => {
    const geometry = geometryOf(goldenBox('B02'));
    const { bands } = solvedAt(geometry, 0.01, [500, 2000], 6);
    const [port] = geometry.ports;
    // one square metre of wall with R = 0 dB leaves the share itself
    const areas = breakInAreas(bands, 1, port.area, geometry.height, [{ area: 1, reduction: [0, 0] }]);
    const [middle = NaN, high = NaN] = areas.map((it) => -10 * Math.log10(it));
    expect(Math.abs(middle - 10)).toBeLessThan(1);
    expect(Math.abs(high - 17)).toBeLessThan(1);
    const half = breakInAreas(bands, 1, port.area, geometry.height, [{ area: 0.5, reduction: [10, 10] }]);
    half.forEach((it, i) => expect(it / (areas[i] ?? NaN)).toBeCloseTo(0.05, 9));
  });
  test('refuses bands that were solved without their inside', () => {
    const solved = solveBox(lined, { cellSize: 0.02, bands: [500], frequenciesPerBand: 1 });
    expect(() => breakInAreas(solved?.bands ?? [], 1, 0.01, 0.15, [])).toThrow(
      'inside of the box must be solved at 500 Hz',
    );
  });
});

describe('boxes that cannot be', () => {
  const good = chamber(1, 0.3, 0.1);
  test.each<[string, BoxGeometry, string]>([
    ['a length of nothing', { ...good, length: 0 }, 'length'],
    ['a partition outside', { ...good, solids: [{ x0: 0.9, y0: 0, x1: 1.1, y1: 0.1 }] }, 'solids.0'],
    ['a lining without thickness', { ...good, linings: [{ x0: 0, y0: 0, x1: 1, y1: 0, filling: AIR }] }, 'linings.0'],
    ['wool beyond the model', { ...good, base: { kind: 'porous', airflowResistivity: 90_000 } }, 'base'],
    ['a wall across', { ...good, solids: [{ x0: 0.5, y0: 0, x1: 0.51, y1: 0.3 }] }, 'solids'],
    ['a closed port', { ...good, solids: [{ x0: 0, y0: 0, x1: 0.01, y1: 0.16 }] }, 'ports.0'],
    ['ports on each other', { ...good, ports: [good.ports[0], good.ports[0]] }, 'ports.1'],
    [
      'linings thicker than the space',
      { ...good, base: { kind: 'linedFaces', height: 0.15, thicknesses: [0.08, 0.08], airflowResistivity: 9000 } },
      'base',
    ],
  ])('%s', (_, geometry, path) => {
    expect(boxFaults(geometry).map((it) => it.path.join('.'))).toEqual([path]);
    expect(() => solveBox(geometry, { cellSize: 0.02 })).toThrow(RangeError);
  });
  test('a grid too fine is refused with its size before anything is built', () => {
    expect(() => solveBox(good, { cellSize: 1e-3 })).toThrow(
      'grid must have at most 60000 unknowns, got 301301 at 0.001 m',
    );
    expect(() => solveBox(good, { cellSize: 1e-9 })).toThrow(RangeError);
    expect(() => solveBox(good, { cellSize: 0 })).toThrow('cell size must be > 0 m, got 0');
  });
  test('a good one has no faults', () => {
    expect(boxFaults(good)).toEqual([]);
  });
});
