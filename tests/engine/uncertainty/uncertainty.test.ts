import { describe, expect, test } from 'vitest';
import { rateThirdOctaves } from '../../../src/engine/ratings/index.ts';
import { evaluateShell, partTransmission } from '../../../src/engine/shell/index.ts';
import {
  assemblyInputs,
  complete,
  createGenerator,
  DAMP,
  figureOf,
  FIXINGS,
  fitSurrogate,
  FLAWLESS,
  JOINTS,
  LABORATORY,
  logTransmission,
  normalHypercube,
  reportedFigure,
  surrogateInto,
} from '../../../src/engine/uncertainty/index.ts';
import type { UncertaintyOptions } from '../../../src/engine/uncertainty/index.ts';
import { hollow, predict, smallBuild, studWall, uncertainty } from './walls.ts';

const usual = { joints: JOINTS.usual, fixings: FIXINGS.usual, damp: DAMP.usual };
const draw = (options: Partial<UncertaintyOptions>) => complete(uncertainty.shell(smallBuild, options));
const width = ({ p5, p95 }: { p5: number; p95: number }): number => p95 - p5;

describe('the surrogate of a make-up', () => {
  const atLaboratory = (assembly: typeof studWall, resolution: 'draft' | 'full') =>
    predict(assembly, { width: 4, height: 2.5 }, resolution);
  const surrogate = complete(fitSurrogate(studWall, usual, atLaboratory));

  test('meets predictions that it has not seen within 1 dB (root mean square over the bands)', () => {
    const inputs = assemblyInputs(studWall, usual);
    const columns = normalHypercube(12, inputs.length, createGenerator(99));
    const drawn = Float64Array.from(logTransmission(studWall, () => 0, FLAWLESS, atLaboratory, 'draft'));
    const out = new Float64Array(drawn.length);
    let square = 0;
    for (let i = 0; i < 12; i += 1) {
      const departure = (key: string) => columns[inputs.findIndex((input) => input.key === key)]?.[i] ?? 0;
      const real = logTransmission(studWall, departure, usual, atLaboratory, 'draft');
      surrogateInto(surrogate, drawn, columns, i, 1, out);
      real.forEach((value, b) => (square += ((10 / Math.LN10) * (value - (out[b] ?? 0))) ** 2));
    }
    expect(Math.sqrt(square / (12 * drawn.length))).toBeLessThan(1);
  });

  test('reports an error of that size itself', () => {
    const dB = Array.from(surrogate.residual, (value) => (10 / Math.LN10) * value);
    expect(Math.max(...dB)).toBeLessThan(5);
    expect(Math.max(...dB)).toBeGreaterThan(0.01);
  });

  test('follows the dip of coincidence through the bands: STC scatters as by real predictions', () => {
    const keys = assemblyInputs(hollow, LABORATORY).map(({ key }) => key);
    const fitted = complete(fitSurrogate(hollow, LABORATORY, atLaboratory));
    const columns = normalHypercube(80, keys.length, createGenerator(4));
    const drawn = Float64Array.from(logTransmission(hollow, () => 0, FLAWLESS, atLaboratory, 'draft'));
    const out = new Float64Array(drawn.length);
    const classOf = (logs: Iterable<number>): number =>
      figureOf(
        'STC',
        Array.from(logs, (value) => (-10 / Math.LN10) * Math.min(0, value)),
      );
    const pairs = Array.from({ length: 80 }, (_, i) => {
      const departure = (key: string) => columns[keys.indexOf(key)]?.[i] ?? 0;
      surrogateInto(fitted, drawn, columns, i, 1, out);
      return [classOf(logTransmission(hollow, departure, LABORATORY, atLaboratory, 'draft')), classOf(out)] as const;
    });
    const scatter = (values: readonly number[]): number => {
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
    };
    const real = scatter(pairs.map(([value]) => value));
    expect(scatter(pairs.map(([, value]) => value)) / real).toBeGreaterThan(0.85);
    expect(scatter(pairs.map(([, value]) => value)) / real).toBeLessThan(1.15);
    expect(scatter(pairs.map(([one, other]) => one - other))).toBeLessThan(0.45 * real);
  });
});

describe('figures without steps', () => {
  test('are cut to the ratings of the standards', () => {
    const { R } = predict(studWall, { width: 4, height: 2.5 }, 'full');
    const ratings = rateThirdOctaves({ bands: smallBuild.source.bands, values: R });
    expect(reportedFigure('Rw', figureOf('Rw', R))).toBe(ratings.Rw);
    expect(Math.abs(reportedFigure('STC', figureOf('STC', R)) - (ratings.STC ?? NaN))).toBeLessThanOrEqual(1);
    expect(reportedFigure('Rw_plus_C50_5000', figureOf('Rw_plus_C50_5000', R))).toBe(
      (ratings.Rw ?? NaN) + (ratings.C50_5000 ?? NaN),
    );
  });
});

describe('uncertainty of a build', () => {
  test('without any spread is the prediction', () => {
    const { whole } = draw({ samples: 20, scale: 0 });
    const shell = evaluateShell(smallBuild, (part) =>
      partTransmission(part, (assembly, size) => predict(assembly, size ?? part, 'full')),
    );
    shell.R.forEach((R, b) => {
      expect(whole.R.p5[b]).toBeCloseTo(R, 6);
      expect(whole.R.p95[b]).toBeCloseTo(R, 6);
    });
    expect(reportedFigure('Rw', whole.figures.Rw.p50)).toBe(shell.ratings.Rw);
  });

  test('widens with the spread', () => {
    const [narrow, plain, wide] = [0.5, 1, 1.5].map((scale) => draw({ samples: 600, scale }).whole);
    for (const figure of ['Rw', 'bass'] as const) {
      expect(width(plain?.figures[figure] ?? { p5: 0, p95: 0 })).toBeGreaterThan(
        width(narrow?.figures[figure] ?? { p5: 0, p95: 0 }),
      );
      expect(width(wide?.figures[figure] ?? { p5: 0, p95: 0 })).toBeGreaterThan(
        width(plain?.figures[figure] ?? { p5: 0, p95: 0 }),
      );
    }
  });

  test('is the same from the same start, and hardly another from another start', () => {
    const [first, again, other] = [1, 1, 2].map((start) => draw({ samples: 1500, start, workmanship: usual }).whole);
    expect(again).toEqual(first);
    expect(other).not.toEqual(first);
    expect(Math.abs((other?.figures.Rw.p50 ?? 0) - (first?.figures.Rw.p50 ?? 0))).toBeLessThan(0.3);
  });

  test('falls with rough joints', () => {
    const careful = draw({ samples: 400, workmanship: { ...usual, joints: JOINTS.careful } }).whole;
    const rough = draw({ samples: 400, workmanship: { ...usual, joints: JOINTS.rough } }).whole;
    expect(rough.figures.Rw.p50).toBeLessThan(careful.figures.Rw.p50);
  });

  test('comes from sources that together explain its spread', () => {
    const { whole, parts } = draw({ samples: 1500, workmanship: usual });
    for (const key of ['Rw', 'STC'] as const) {
      const together = Math.hypot(...whole.doubts.map(({ figures }) => figures[key]));
      const sampled = width(whole.figures[key]) / 3.29;
      expect(together / sampled).toBeGreaterThan(0.75);
      expect(together / sampled).toBeLessThan(1.33);
    }
    expect(whole.doubts.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['opening', 'measured']));
    expect(parts['north']?.doubts.some(({ kind }) => kind === 'opening')).toBe(false);
    const order = whole.doubts.map(({ figures }) => figures.Rw);
    expect(order).toEqual(order.toSorted((a, b) => b - a));
  });

  test('gives every part its own interval around its own prediction', () => {
    const { parts } = draw({ samples: 400 });
    const north = parts['north']?.figures.Rw;
    const { R } = predict(studWall, { width: 4, height: 2.5 }, 'full');
    expect(north?.p5).toBeLessThan(figureOf('Rw', R));
    expect(north?.p95).toBeGreaterThan(figureOf('Rw', R));
    const vent = figureOf(
      'Rw',
      smallBuild.source.bands.map(() => 45),
    );
    expect(Math.abs((parts['vent']?.figures.Rw.p50 ?? NaN) - vent)).toBeLessThan(0.3);
  });

  test('of a make-up stands without leaks: a laboratory seals its joints', () => {
    const rough = { ...usual, joints: JOINTS.rough };
    const [sealed, leaky] = [usual, rough].map((workmanship) =>
      complete(uncertainty.assembly(studWall, { samples: 200, workmanship })),
    );
    expect(leaky).toEqual(sealed);
  });
});
