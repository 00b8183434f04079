import type { NoteFigure, SymbolKey } from '../../quantities/index.ts';
import { symbols } from '../../quantities/index.ts';

/** A number of a note with the unit of its quantity. */
export const figure = (quantity: SymbolKey, term: string, value: number): NoteFigure => ({
  term,
  value,
  unit: symbols[quantity].unit,
});

/** A share of 0 to 1 as it is read, in per cent. */
export const percentFigure = (term: string, share: number): NoteFigure => ({ term, value: 100 * share, unit: '%' });

/** A length in m as builders read it, in millimetres. */
export const lengthFigure = (term: string, length: number): NoteFigure => ({ term, value: 1000 * length, unit: 'mm' });
