/** Units that a field may be written in, by quantity; factors into the quantity's first unit. */
const LENGTH: Readonly<Record<string, number>> = {
  mm: 1,
  millimetre: 1,
  millimetres: 1,
  cm: 10,
  m: 1000,
  metre: 1000,
  metres: 1000,
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  '"': 25.4,
  ft: 304.8,
  foot: 304.8,
  feet: 304.8,
  "'": 304.8,
};
const FREQUENCY: Readonly<Record<string, number>> = { hz: 1, khz: 1000 };
const QUANTITIES: readonly Readonly<Record<string, number>>[] = [LENGTH, FREQUENCY];

/** A unit as people type it, in one spelling: "kg/m²" and "KG/m^2" are "kg/m2". */
export const plainUnit = (unit: string): string =>
  unit
    .toLowerCase()
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replaceAll('·', '')
    .replace(/[\s^.]/g, '');

/** Factor from one unit into another, or null where they do not measure the same thing. */
export const unitFactor = (from: string, to: string): number | null => {
  const [a, b] = [plainUnit(from), plainUnit(to)];
  if (a === b) return 1;
  const table = QUANTITIES.find((units) => Object.hasOwn(units, b));
  const [numerator, denominator] = [table?.[a], table?.[b]];
  return numerator === undefined || denominator === undefined ? null : numerator / denominator;
};

export const isLength = (unit: string): boolean => Object.hasOwn(LENGTH, plainUnit(unit));
export const isFeet = (unit: string): boolean => LENGTH[plainUnit(unit)] === 304.8;

/** How a unit is printed. */
export const shownUnit = (unit: string): string => unit.replace('m2', 'm²').replace('m3', 'm³');
