import { readDecimal } from './readDecimal.ts';
import { isFeet, isLength, shownUnit, unitFactor } from './units.ts';

/** What was read: the value in the field's unit, and how it was understood where that is not plain. */
export type Reading =
  | { readonly ok: true; readonly value: number; readonly understood: string | null }
  | { readonly ok: false; readonly why: string };

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': ' 1/2',
  '¼': ' 1/4',
  '¾': ' 3/4',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
};

const plain = (text: string): string =>
  text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => FRACTIONS[sign] ?? sign)
    .replace(/[\u2212\u2013\u2014]/g, '-')
    .replace(/[\u00a0\u202f\u2009\t]/g, ' ')
    .replace(/[″“”]|''/g, '"')
    .replace(/[′‘’]/g, "'")
    .replace(/[×✕*]/g, 'x')
    .replace(/ +/g, ' ')
    .trim();

const MIXED = /^(?:(\d+)[ -]+)?(\d+) ?\/ ?(\d+)/;
const DIGITS = /^(?:\d[\d.,]*(?: \d{3}(?!\d|\/))*[.,]?\d*|[.,]\d+)/;
const UNIT = /^ ?("|'|[a-z%/²³2^·]+[a-z\d²³/·]*)/i;

interface Term {
  readonly value: number;
  readonly unit: string | null;
}

const readTerm = (text: string): { term: Term; rest: string } | string => {
  const mixed = MIXED.exec(text);
  const written = mixed?.[0] ?? DIGITS.exec(text)?.[0];
  if (written === undefined) return `“${text}” is not a number.`;
  let value: number;
  if (mixed) {
    if (Number(mixed[3]) === 0) return 'A fraction cannot have 0 below the line.';
    value = Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
  } else {
    const decimal = readDecimal(written);
    if (!decimal.ok) return decimal.why;
    value = decimal.value;
  }
  const rest = text.slice(written.length);
  const unit = UNIT.exec(rest);
  return unit?.[1] === undefined || /^ ?x ?\d/.test(rest)
    ? { term: { value, unit: null }, rest: rest.trim() }
    : { term: { value, unit: unit[1] }, rest: rest.slice(unit[0].length).trim() };
};

/** Adds "4 ft 6 in" up; a bare number after feet is inches. */
const addTerms = (terms: readonly Term[], unit: string, bare: string): number | string => {
  let sum = 0;
  for (const [index, term] of terms.entries()) {
    const before = terms[index - 1]?.unit ?? null;
    const written = term.unit ?? (before === null ? bare : isFeet(before) ? 'in' : null);
    if (written === null || (index > 0 && !isLength(unit)) || (index > 0 && before === null))
      return 'More than one number is written here. Write one, or feet and inches such as 4 ft 6 in.';
    const factor = unitFactor(written, unit);
    if (factor === null) return `“${written}” is not a unit of this field, which is in ${shownUnit(unit)}.`;
    if (before !== null && isFeet(before) && unitFactor(written, 'in') === 1 && term.value >= 12)
      return 'After feet, write fewer than 12 inches.';
    sum += term.value * factor;
  }
  return sum;
};

/** "2 x 12.5" and "12.5 x 2": so many of one. */
const repeated = (text: string): { count: number; single: string } => {
  const before = /^(\d+) ?x ?([\d.,].*)$/i.exec(text);
  if (before) return { count: Number(before[1]), single: before[2] ?? '' };
  const after = /^(.*\d.*?) ?x ?(\d+)$/i.exec(text);
  return after ? { count: Number(after[2]), single: after[1] ?? '' } : { count: 1, single: text };
};

/** Rounds away what binary arithmetic adds (5.2 m is 5200 mm, not 5200.000000000001). */
const tidy = (value: number): number => Number(value.toPrecision(12));

/**
 * Reads a number as people write it: 12.5, 12,5, 1/2", 2 x 12.5, 38mm, 3.8 cm, 4 ft 6 in.
 * @param unit the field's unit, in which the value comes back
 * @param bare unit of a number without one; the field's own unless given
 */
export const readNumber = (text: string, unit: string, bare: string = unit): Reading => {
  let rest = plain(text).replace(/^[£$€] ?/, '');
  if (rest === '') return { ok: false, why: 'Nothing is written here.' };
  const negative = rest.startsWith('-');
  if (negative) rest = rest.slice(1).trim();
  const written = rest;
  const { count, single } = repeated(written);
  rest = single;
  const terms: Term[] = [];
  while (rest !== '') {
    const read = readTerm(rest);
    if (typeof read === 'string') return { ok: false, why: read };
    terms.push(read.term);
    rest = read.rest;
  }
  const sum = addTerms(terms, unit, bare);
  if (typeof sum === 'string') return { ok: false, why: sum };
  const value = tidy((negative ? -1 : 1) * count * sum);
  const one = `${tidy(sum)} ${shownUnit(unit)}`;
  const whole = `${value} ${shownUnit(unit)}`;
  const converted = terms.some((term) => (term.unit ?? bare) !== unit) || terms.length > 1;
  return {
    ok: true,
    value,
    understood: single !== written ? `${count} × ${one} = ${whole}` : converted ? whole : null,
  };
};
