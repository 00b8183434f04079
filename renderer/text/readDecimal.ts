/** A number read from text, or the sentence that says why it cannot be. */
export type Decimal = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly why: string };

const refuse = (why: string): Decimal => ({ ok: false, why });

const grouped = (whole: string, mark: string): string | null => {
  const groups = whole.split(mark);
  const [first = '', ...rest] = groups;
  const proper = first.length >= 1 && first.length <= 3 && rest.every((group) => group.length === 3);
  return proper ? groups.join('') : null;
};

/**
 * Reads digits with point or comma: 12.5, 12,5, 1,200.5, 1.200,5, 1 200. A mark is dropped only where it stands between
 * full groups of three; a comma before exactly three digits could be either and is refused.
 */
export const readDecimal = (text: string): Decimal => {
  const written = text.trim();
  if (!/^\d[\d., ]*$|^[.,]\d+$/.test(written)) return refuse(`“${written}” is not a number.`);
  const marks = [...new Set(written.replace(/\d/g, ''))];
  const last = Math.max(...marks.map((mark) => written.lastIndexOf(mark)), -1);
  const decimal = last < 0 ? '' : (written[last] ?? '');
  const misplaced = refuse(`The marks in “${written}” do not stand between groups of three digits.`);
  if (decimal === '') return { ok: true, value: Number(written) };

  const once = written.indexOf(decimal) === last;
  const others = marks.filter((mark) => mark !== decimal);
  if (others.length > 1) return misplaced;
  if (!once || decimal === ' ') {
    const whole = others.length === 0 ? grouped(written, decimal) : null;
    return whole === null ? misplaced : { ok: true, value: Number(whole) };
  }
  const before = written.slice(0, last);
  const after = written.slice(last + 1);
  if (after === '') return refuse(`“${written}” ends in a mark. Write the digits after it, or leave it out.`);
  const [mark] = others;
  const whole = mark === undefined ? before : grouped(before, mark);
  if (whole === null) return misplaced;
  if (decimal === ',' && mark === undefined && after.length === 3 && /^[1-9]\d{0,2}$/.test(before))
    return refuse(
      `“${written}” could be ${before}.${after} or ${before}${after}. Write it without the comma, or with a point.`,
    );
  return { ok: true, value: Number(`${whole || '0'}.${after}`) };
};
