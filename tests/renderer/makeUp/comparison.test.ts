import { describe, expect, it } from 'vitest';
import { bassFigure, bassIsExtrapolated } from '../../../renderer/views/makeUp/bassFigure.ts';
import { columnsOf, usersOf } from '../../../renderer/views/makeUp/columns.ts';
import { figureRows, type ColumnFacts } from '../../../renderer/views/makeUp/comparison.ts';
import { hertz, numberCells, signed } from '../../../renderer/views/makeUp/figureCells.ts';
import { guidesOf, MARKS, seriesOf } from '../../../renderer/views/makeUp/curves.ts';
import { THIRD_OCTAVES } from '../../../src/engine/quantities/index.ts';
import type { Prediction } from '../../../src/engine/transmission/index.ts';
import { example } from './example.ts';

const prediction = (change: Partial<Prediction> = {}): Prediction => ({
  bands: THIRD_OCTAVES,
  R: THIRD_OCTAVES.map(() => 40),
  spread: THIRD_OCTAVES.map(() => 3),
  extrapolated: THIRD_OCTAVES.map(() => null),
  ratings: {
    Rw: 52,
    C: -2,
    Ctr: -7,
    C50_3150: null,
    C50_5000: -4,
    C100_5000: null,
    Ctr50_3150: null,
    Ctr50_5000: -12,
    Ctr100_5000: null,
    STC: 51,
    OITC: 40,
  },
  ratingSpread: 2,
  surfaceMass: 30,
  thickness: 0.12,
  resonances: [70],
  criticalFrequencies: [2500, 2500],
  leaves: [],
  paths: [],
  constructionClass: 'stud wall',
  resolution: 'full',
  notes: [],
  ...change,
});
const column = (change: Partial<Prediction> = {}): ColumnFacts => ({
  prediction: prediction(change),
  price: 50,
  illustrative: false,
});
const row = (columns: readonly ColumnFacts[], label: RegExp) => {
  const found = figureRows(columns, '£').find((one) => label.test(one.label));
  if (!found) throw new Error(`There is no row ${String(label)}.`);
  return found;
};

describe('the bass figure', () => {
  it('is the energy mean of 50, 63, 80 and 100 Hz: the weakest band decides', () => {
    expect(bassFigure(prediction())).toBeCloseTo(40, 9);
    const R = THIRD_OCTAVES.map((band) => (band === 63 ? 20 : 60));
    // one band of four at 20 dB and the others negligible: 20 + 10 lg 4 = 26.0 dB
    expect(bassFigure(prediction({ R }))).toBeCloseTo(26.02, 1);
  });
  it('is marked where the model is outside its validity in those bands only', () => {
    const beyond = (band: number) => THIRD_OCTAVES.map((one) => (one === band ? 'too low' : null));
    expect(bassIsExtrapolated(prediction({ extrapolated: beyond(63) }))).toBe(true);
    expect(bassIsExtrapolated(prediction({ extrapolated: beyond(31.5) }))).toBe(false);
    expect(row([column({ extrapolated: beyond(63) })], /^Bass/).cells[0]?.text).toBe('≈ 40');
  });
});

describe('the comparison', () => {
  it('writes Rw with its terms as ISO 717-1 does', () => {
    expect(row([column()], /^Rw/).cells[0]?.text).toBe('52 (\u22122; \u22127)');
  });
  it('shows differences against the first column, and which way is better', () => {
    const ratings = { ...prediction().ratings, Rw: 58 };
    const cells = row([column(), column({ ratings })], /^Rw/).cells;
    expect(cells.map((cell) => cell.difference)).toEqual([null, '+6']);
    expect(cells[1]?.better).toBe(true);
    const thick = row([column(), column({ thickness: 0.2 })], /^Thickness/).cells[1];
    expect([thick?.text, thick?.difference, thick?.better]).toEqual(['200', '+80', false]);
    expect(row([column(), column({ surfaceMass: 60 })], /^Mass/).cells[1]?.better).toBeNull();
  });
  it('has a dash and no difference where a figure is missing', () => {
    const empty: ColumnFacts = { prediction: null, price: null, illustrative: false };
    for (const one of figureRows([column(), empty], '£'))
      expect(one.cells[1]).toMatchObject({ text: '–', difference: null });
    for (const one of figureRows([empty, column()], '£')) expect(one.cells[1]?.difference).toBeNull();
  });
  it('marks a price that is only the library’s illustration', () => {
    expect(row([{ ...column(), illustrative: true }], /^Material/).cells[0]?.text).toBe('50 *');
    expect(row([column()], /^Material/).cells[0]?.text).toBe('50');
  });
  it('says what a frequency and a change are, with a true minus', () => {
    expect([63.2, 999.6, 2540].map(hertz)).toEqual(['63', '1000', '2.5k']);
    expect([signed(-3.2), signed(0.2), signed(4)]).toEqual(['\u22123', '±0', '+4']);
    expect(numberCells([10, 10.04], 1, true)[1]?.better).toBeNull();
    // 48.4 and 45.6 are written 48 and 46: the difference beside them is theirs
    expect(numberCells([48.4, 45.6], 0, true)[1]).toMatchObject({ text: '46', difference: '\u22122', better: false });
  });
});

describe('the columns', () => {
  it('are those compared, after the one that is only being looked at', () => {
    const project = example();
    expect(columnsOf(project, null)).toEqual(['stud', 'brick']);
    expect(columnsOf(project, 'damped')).toEqual(['damped', 'stud', 'brick']);
    expect(columnsOf(project, 'brick')).toEqual(['stud', 'brick']);
    expect(columnsOf(project, 'gone')).toEqual(['stud', 'brick']);
  });
  it('begin with the first make-up where nothing is compared', () => {
    const { compare: _, ...project } = example();
    expect(columnsOf(project, null)).toEqual(['stud']);
    expect(columnsOf({ ...project, assemblies: {} }, null)).toEqual([]);
  });
  it('know where a make-up is used', () => {
    expect(usersOf(example(), 'stud')).toEqual({ built: ['North wall'], considered: [] });
    expect(usersOf(example(), 'brick').built).toEqual([]);
  });
});

describe('the curves', () => {
  it('keep their place, dash and letter while one waits for its prediction', () => {
    const series = seriesOf([
      { letter: 'A', name: 'Stud wall', prediction: null },
      { letter: 'B', name: 'Brick', prediction: prediction() },
    ]);
    expect(series.map((one) => [one.short, one.values.length])).toEqual([
      ['A', 0],
      ['B', 27],
    ]);
  });
  it('bring their resonances and coincidences as marks, equal ones once', () => {
    const guides = guidesOf([{ letter: 'A', name: 'Stud wall', prediction: prediction() }], null, 'A');
    expect(guides.map((guide) => [guide.group, guide.label])).toEqual([
      [MARKS, 'f0'],
      [MARKS, 'fc'],
    ]);
  });
});
