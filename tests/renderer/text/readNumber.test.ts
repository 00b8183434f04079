import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from '../../../renderer/text/readNumber.ts';

const read = (text: string, unit = 'mm', bare = unit): number | string => {
  const reading = readNumber(text, unit, bare);
  return reading.ok ? reading.value : reading.why;
};

describe('a number is read as people write it', () => {
  it.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['1/2"', 12.7],
    ['½ in', 12.7],
    ['2 1/4 in', 57.15],
    ['2-1/4"', 57.15],
    ['2 x 12.5', 25],
    ['2×12,5', 25],
    ['12.5 x 2', 25],
    ['2 x 1/2"', 25.4],
    ['38mm', 38],
    ['3.8 cm', 38],
    ['1.2 m', 1200],
    ['1 200', 1200],
    ['1 200,5', 1200.5],
    ['1\u202f200', 1200],
    ['1,200.5', 1200.5],
    ['1.200,5', 1200.5],
    ['1,200,000', 1200000],
    ['0,125', 0.125],
    ['4 ft 6 in', 1371.6],
    ["4' 6", 1371.6],
    ['4′6½″', 1384.3],
    ['.5', 0.5],
    ['  7  ', 7],
  ])('%s is %d mm', (text, millimetres) => {
    expect(read(text)).toBeCloseTo(millimetres, 9);
  });

  it.each([
    ['5200 mm', 5.2],
    ['17 ft', 5.1816],
    ['5.2', 5.2],
    ['1.125', 1.125],
  ])('%s is %d m in a field in metres', (text, metres) => {
    expect(read(text, 'm')).toBeCloseTo(metres, 9);
  });

  it('takes a bare number in the unit the field shows', () => {
    expect(read('0.5', 'mm', 'in')).toBeCloseTo(12.7, 9);
    expect(read('17', 'm', 'ft')).toBeCloseTo(5.1816, 9);
  });

  it('takes the typographic minus', () => {
    expect(read('\u22123.5', 'dB')).toBe(-3.5);
  });

  it('takes the field’s own unit however it is spelled', () => {
    expect(read('10.5 kg/m²', 'kg/m2')).toBe(10.5);
    expect(read('10.5 kg/m^2', 'kg/m2')).toBe(10.5);
    expect(read('1.2 kHz', 'Hz')).toBe(1200);
    expect(read('£12.50', 'GBP')).toBe(12.5);
  });

  it('says how a product or another unit was understood, and nothing where it is plain', () => {
    expect(readNumber('2 x 12.5', 'mm')).toMatchObject({ understood: '2 × 12.5 mm = 25 mm' });
    expect(readNumber('1/2"', 'mm')).toMatchObject({ understood: '12.7 mm' });
    expect(readNumber('12.5', 'mm')).toMatchObject({ understood: null });
  });
});

describe('a doubtful number is refused with a sentence', () => {
  it.each([
    ['12,00.5', /do not stand between groups/],
    ['1,20,300', /do not stand between groups/],
    ['1.20.3', /do not stand between groups/],
    ['1,200', /could be 1\.200 or 1200/],
    ['12.', /ends in a mark/],
    ['', /Nothing is written/],
    ['wide', /not a number/],
    ['12 kg', /not a unit of this field/],
    ['1/0', /0 below the line/],
    ['12 13', /More than one number/],
    ["1' 200", /fewer than 12 inches/],
    ['1e3', /not a unit|not a number/],
    ['12.5/2', /not a unit|not a number/],
  ])('“%s”', (text, sentence) => {
    expect(read(text)).toMatch(sentence);
  });
});

describe('laws of reading', () => {
  const decimals = fc.integer({ min: 0, max: 99_999_99 }).map((n) => n / 100);

  it('brings every number back, with point or comma', () => {
    fc.assert(
      fc.property(decimals, (value) => {
        const text = value.toFixed(2);
        expect(read(text)).toBe(value);
        expect(read(text.replace('.', ','))).toBe(value);
      }),
      { numRuns: 300 },
    );
  });

  it('brings numbers grouped in three languages back', () => {
    fc.assert(
      fc.property(decimals, fc.constantFrom('en-GB', 'de-DE', 'fr-FR'), (value, locale) => {
        const text = new Intl.NumberFormat(locale, { minimumFractionDigits: 2 }).format(value);
        expect(read(text)).toBe(value);
      }),
      { numRuns: 300 },
    );
  });

  it('never throws and never yields anything but a finite number or a sentence', () => {
    const scraps = fc.array(
      fc.constantFrom('1', '2', '.', ',', ' ', '/', 'x', '"', "'", 'ft', 'm', '-', '½', '(', 'é'),
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          scraps.map((list) => list.join('')),
        ),
        (text) => {
          const reading = readNumber(text, 'mm');
          if (reading.ok) expect(Number.isFinite(reading.value)).toBe(true);
          else expect(reading.why.length).toBeGreaterThan(5);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
