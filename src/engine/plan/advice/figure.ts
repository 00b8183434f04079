import type { NoteFigure, SymbolKey } from '../../quantities/index.ts';
import { symbols } from '../../quantities/index.ts';

/** A number of a note with the unit of its quantity. */
export const figure = (quantity: SymbolKey, term: string, value: number): NoteFigure => ({
  term,
  value,
  unit: symbols[quantity].unit,
});
