import * as v from 'valibot';

/** Fields that the document's schemas are made of. A message of theirs is what is allowed, for the sentence of a fault. */

export const id = v.pipe(
  v.string(),
  v.regex(/^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/, 'letters, digits, dot, dash or underscore, 1 to 64 of them'),
);

export const name = v.pipe(v.string(), v.minLength(1), v.maxLength(200));

/** Text without which a document is complete. */
export const text = (longest: number, what: string) =>
  v.optional(v.pipe(v.string(), v.maxLength(longest), v.description(what)));

export const between = (least: number, most: number) => {
  const allowed = `a number from ${least} to ${most}`;
  return v.pipe(v.number(allowed), v.minValue(least, allowed), v.maxValue(most, allowed));
};

/** A number that has a default, or may stay unknown: what happens without it is said in the schema. */
export const optionalBetween = (least: number, most: number, what: string) =>
  v.optional(v.pipe(between(least, most), v.description(what)));

export const price = (what: string) => optionalBetween(0, 1e7, what);

/** What a part costs; where a price by area and one by piece are given, both count. */
export const priced = {
  price_per_m2: price('material, per m² of the part'),
  price_each: price('material, for the whole part'),
  labour_per_m2: price('work, per m² of the part'),
  labour_each: price('work, for the whole part'),
};
